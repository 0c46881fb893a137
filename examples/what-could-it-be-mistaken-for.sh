#!/bin/sh
# A ring of which the join can be felt, with strokes that slant: which kinds fit, and what is left to look at?
cd "$(dirname "$0")/.." || exit
merese identify join=felt slant=slanting groove=one
