#!/bin/sh
# What may a book mean by a triple ring?
cd "$(dirname "$0")/.." || exit
merese covers "triple ring"
