#!/bin/sh
# What do the books call a spiral on a neck, and who has looked?
cd "$(dirname "$0")/.." || exit
merese covers "spiral neck trail"
