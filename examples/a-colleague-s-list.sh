#!/bin/sh
# What would a colleague's list bring in? Nothing is written without --apply.
cd "$(dirname "$0")/.." || exit
merese import examples/colleague.bib
