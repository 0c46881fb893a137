#!/bin/sh
# Somebody wrote that a join can be felt: who was it?
cd "$(dirname "$0")/.." || exit
merese find "join felt"
