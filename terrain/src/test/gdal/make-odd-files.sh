#!/bin/sh
# SPDX-License-Identifier: Apache-2.0
# Makes the small odd elevation files for GroundFilesTest with GDAL's command line tools and bindings (Debian: gdal-bin, python3-gdal).
# Run once by hand from the module's folder, after make-geotiff-matrix.py: sh src/test/gdal/make-odd-files.sh
set -e
target=$PWD/src/test/resources/bermwright/terrain/gridfile
work=$(mktemp -d)
unzip -q "$target/geotiff-matrix.zip" float32-deflate-p1-tiled-classic-little.tif -d "$work"
cd "$work"
in=float32-deflate-p1-tiled-classic-little.tif
to() { gdal_translate -q -co COMPRESS=DEFLATE "$@"; }
to -mo AREA_OR_POINT=Point $in point.tif
to -a_srs IAU_2015:30100 -a_ullr 20 -10 20.04 -10.03 $in degrees.tif
to -a_srs IAU_2015:30110 -a_ullr 1000000 1200150 1000200 1200000 $in equirectangular-40n.tif
to -a_srs '+proj=eqc +lat_ts=40 +lon_0=30 +R=1737400' -a_ullr 0 1213018 200 1212868 $in equirectangular-true-at-40n.tif
to -a_srs '+proj=tmerc +lat_0=40 +lon_0=30 +R=1737400' $in transverse-mercator.tif
to -a_srs '+proj=stere +lat_0=40 +lon_0=30 +R=1737400' -a_ullr -100 75 100 -75 $in oblique-stereographic.tif
to -a_srs EPSG:32633 -a_ullr 500000 6200150 500200 6200000 $in utm33.tif
to -a_ullr 10000 20150 10200 20030 $in oblong-pixels.tif
gdal_translate -q -ot Byte -co PHOTOMETRIC=RGB -b 1 -b 1 -b 1 $in photo.tif
gdal_translate -q -co COMPRESS=ZSTD $in zstd.tif
gdal_translate -q -of AAIGrid $in ascii.asc
gdalwarp -q -dstnodata nan $in nan.tif
gdal_translate -q -of AAIGrid nan.tif nan.asc
for unit in fathom ft; do
    cp $in $unit.tif
    /usr/bin/python3 -c "
from osgeo import gdal
d = gdal.Open('$unit.tif', gdal.GA_Update)
d.GetRasterBand(1).SetUnitType('$unit')
"
done
rm -f "$target/odd-files.zip"
zip -q -X "$target/odd-files.zip" point.tif degrees.tif equirectangular-40n.tif equirectangular-true-at-40n.tif \
    transverse-mercator.tif oblique-stereographic.tif utm33.tif oblong-pixels.tif photo.tif zstd.tif ascii.asc \
    ascii.prj nan.asc fathom.tif ft.tif
rm -r "$work"
