#!/bin/sh
# The sources of a talk in the order in which it shows them.
cd "$(dirname "$0")/.." || exit
merese reading-list --script examples/talk.txt
