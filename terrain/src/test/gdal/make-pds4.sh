#!/bin/sh
# SPDX-License-Identifier: Apache-2.0
# Makes pds4.xml and pds4.img for GroundSourceTest: one file of the matrix as GDAL 3.6.2 writes it in PDS4.
# Run once by hand from the module's folder (Debian: gdal-bin): sh src/test/gdal/make-pds4.sh
set -e
target=$PWD/src/test/resources/bermwright/terrain/gridfile
work=$(mktemp -d)
unzip -q "$target/geotiff-matrix.zip" float32-deflate-p1-tiled-classic-little.tif -d "$work"
cd "$work"
gdal_translate -q -of PDS4 float32-deflate-p1-tiled-classic-little.tif pds4.xml
cp pds4.xml pds4.img "$target"
rm -r "$work"
