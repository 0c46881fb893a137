#!/bin/sh
# Which pages name it that nobody has noted?
cd "$(dirname "$0")/.." || exit
merese sweep "bladed ring"
