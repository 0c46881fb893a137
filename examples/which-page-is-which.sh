#!/bin/sh
# The text of an old directory's own pages is attached: which printed page is each page of the file?
cd "$(dirname "$0")/.." || exit
merese pages brackenford-directory-1817
