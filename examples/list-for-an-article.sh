#!/bin/sh
# Each source once, for an article on feet, as Markdown.
cd "$(dirname "$0")/.." || exit
merese reading-list "folded foot" "domed foot" --pictured --by source --as markdown
