#!/bin/sh
# SPDX-License-Identifier: Apache-2.0
# Makes the expected slopes and aspects for HornSlopeGdalTest with gdaldem (Debian: gdal-bin).
# Run once by hand from the module's folder, after make-geotiff-matrix.py: sh src/test/gdal/make-slopes.sh
set -e
target=$PWD/src/test/resources/bermwright/terrain/gridfile
work=$(mktemp -d)
unzip -q "$target/geotiff-matrix.zip" float32-deflate-p1-tiled-classic-little.tif -d "$work"
cd "$work"
gdaldem slope -q -alg Horn float32-deflate-p1-tiled-classic-little.tif slope.tif
gdaldem aspect -q -alg Horn float32-deflate-p1-tiled-classic-little.tif aspect.tif
# little-endian 32-bit floating point, degrees, northernmost row first, -9999 where there is none
gdal_translate -q -of ENVI -ot Float32 slope.tif "$target/gdaldem-slope.f32"
gdal_translate -q -of ENVI -ot Float32 aspect.tif "$target/gdaldem-aspect.f32"
rm -f "$target"/gdaldem-*.hdr "$target"/gdaldem-*.xml
rm -r "$work"
