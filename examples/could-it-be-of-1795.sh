#!/bin/sh
# Could a decanter with a target stopper be of 1795? Who dates such stoppers, and who warns of copies?
cd "$(dirname "$0")/.." || exit
merese claims "target stopper" --year 1795
