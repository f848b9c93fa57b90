#!/bin/sh
# SPDX-License-Identifier: Apache-2.0
# Makes foreign-ground.tif: heights that this project did not make, in a file that GDAL's tools wrote.
# The heights are a part of the EGM96 geoid around the Indian Ocean low, as in Debian's proj-data (egm96_15.gtx, MIT
# style licence), a quarter as high and laid down near the Moon's south pole with 4 m between nodes.
# Run once by hand from the module's folder (Debian: gdal-bin, proj-data): sh src/test/gdal/make-foreign-ground.sh
set -e
target=$PWD/src/test/resources/bermwright/terrain/gridfile
work=$(mktemp -d)
cd "$work"
gdal_translate -q -srcwin 1000 240 240 240 -scale -100 100 -25 25 -ot Float32 \
    /usr/share/proj/egm96_15.gtx part.tif
gdal_translate -q -a_srs IAU_2015:30135 -a_ullr 12000 -8000 12960 -8960 -a_nodata -9999 \
    -co TILED=YES -co BLOCKXSIZE=64 -co BLOCKYSIZE=64 -co COMPRESS=DEFLATE -co PREDICTOR=3 \
    part.tif "$target/foreign-ground.tif"
gdalinfo -stats --config GDAL_PAM_ENABLED NO "$target/foreign-ground.tif" | grep -E 'Size|STATISTICS'
gdaldem slope -q -alg Horn "$target/foreign-ground.tif" slope.tif
gdalinfo -stats slope.tif | grep STATISTICS
rm -r "$work"
