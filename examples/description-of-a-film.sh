#!/bin/sh
# The same within the 400 bytes that are left for a description.
cd "$(dirname "$0")/.." || exit
merese reading-list --script examples/talk.txt --fit 400
