# SPDX-License-Identifier: Apache-2.0
"""Makes projections.zip: the same small ground in many reference systems, with PROJ's latitudes and longitudes.

Run once by hand on a machine with GDAL's Python bindings (Debian: python3-gdal), from the module's folder:
    /usr/bin/python3 src/test/gdal/make-projections.py
places.csv holds, for each system, the place in projected metres, and latitude and longitude by PROJ. Each system
comes as a GeoTIFF (.tif), as the .prj that GDAL writes beside an ESRI ASCII grid, and as well-known text of 2019.
"""
import io
import os
import tempfile
import zipfile

import numpy as np
from osgeo import gdal, osr

gdal.UseExceptions()
osr.UseExceptions()
TARGET = "src/test/resources/bermwright/terrain/gridfile/projections.zip"
MOON = " +R=1737400 +units=m +no_defs"
SYSTEMS = {
    "south-polar": ("IAU_2015:30135", 107000, -42000),
    "north-polar": ("IAU_2015:30130", -31000, 5000),
    "equirectangular": ("IAU_2015:30110", 456000, -9000),
    "equirectangular-180": ("IAU_2015:30115", -456000, 9000),
    "south-polar-turned": ("+proj=stere +lat_0=-90 +lon_0=37.5" + MOON, 7000, 8000),
    "south-polar-scaled": ("+proj=stere +lat_0=-90 +lon_0=0 +k=0.994 +x_0=500000 +y_0=500000" + MOON, 507000, 512000),
    "south-polar-parallel": ("+proj=stere +lat_0=-90 +lat_ts=-80 +lon_0=0" + MOON, 107000, 42000),
    "north-polar-parallel": ("+proj=stere +lat_0=90 +lat_ts=71 +lon_0=-20" + MOON, 9000, 42000),
    "equirectangular-parallel": ("+proj=eqc +lat_ts=26 +lon_0=3.6" + MOON, 1500, 790000),
    "transverse-mercator": ("+proj=tmerc +lat_0=26.1 +lon_0=3.6 +k=0.999 +x_0=250000 +y_0=2500000" + MOON,
                            260000, 2510000),
    "oblique-stereographic": ("+proj=sterea +lat_0=-43 +lon_0=-11" + MOON, -4000, 6000),
    "utm-33-south": ("EPSG:32733", 400000, 6200000),
    "mars-south": ("+proj=stere +lat_0=-90 +lon_0=0 +a=3396190 +b=3376200 +units=m +no_defs", 12000, 9000),
}


def main():
    gdal.SetConfigOption("GDAL_PAM_ENABLED", "NO")
    lines = ["name,east,north,latitude,longitude"]
    with tempfile.TemporaryDirectory() as folder, zipfile.ZipFile(TARGET, "w", zipfile.ZIP_DEFLATED) as out:
        def add(name, data):
            out.writestr(zipfile.ZipInfo(name, (1980, 1, 1, 0, 0, 0)), data, zipfile.ZIP_DEFLATED)

        for name, (text, east, north) in SYSTEMS.items():
            system = osr.SpatialReference()
            system.SetFromUserInput(text)
            system.SetAxisMappingStrategy(osr.OAMS_TRADITIONAL_GIS_ORDER)
            body = system.CloneGeogCS()
            body.SetAxisMappingStrategy(osr.OAMS_TRADITIONAL_GIS_ORDER)
            longitude, latitude, _ = osr.CoordinateTransformation(system, body).TransformPoint(east, north)
            lines.append("%s,%r,%r,%.12f,%.12f" % (name, east, north, latitude, longitude))
            memory = gdal.GetDriverByName("MEM").Create("", 4, 4, 1, gdal.GDT_Float32)
            memory.SetProjection(system.ExportToWkt())
            memory.SetGeoTransform((east - 20, 10, 0, north + 20, 0, -10))
            memory.GetRasterBand(1).WriteArray(np.arange(16, dtype="f4").reshape(4, 4))
            path = os.path.join(folder, name + ".tif")
            gdal.GetDriverByName("GTiff").CreateCopy(path, memory)
            add(name + ".tif", open(path, "rb").read())
            path = os.path.join(folder, name + ".asc")
            gdal.GetDriverByName("AAIGrid").CreateCopy(path, memory)
            add(name + ".prj", open(path[:-3] + "prj", "rb").read())
            add(name + ".wkt", system.ExportToWkt(["FORMAT=WKT2_2019"]))
        add("places.csv", "\n".join(lines) + "\n")
    print("\n".join(lines))


main()
