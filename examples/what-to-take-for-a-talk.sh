#!/bin/sh
# The books and pieces of a talk, in its order and as they stand on the shelf.
cd "$(dirname "$0")/.." || exit
merese pull --script examples/talk.txt
