#!/bin/sh
# Three sources for a document in LaTeX.
cd "$(dirname "$0")/.." || exit
merese export --as bibtex quenby-1949 pell-dunmarsh-2003 farrow-1988
