#!/bin/sh
# Which source of the library prints "bladed ring" first, and what was said before?
cd "$(dirname "$0")/.." || exit
merese first "bladed ring"
