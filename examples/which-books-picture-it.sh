#!/bin/sh
# Which of our own books picture a bladed ring, and what does each call it?
cd "$(dirname "$0")/.." || exit
merese covers "bladed ring" --pictured --owned
