# SPDX-License-Identifier: Apache-2.0
"""Makes geotiff-matrix.zip: one small GeoTIFF written by GDAL for each cell of the matrix the reader promises.

Run once by hand on a machine with GDAL's Python bindings (Debian: python3-gdal), from the module's folder:
    /usr/bin/python3 src/test/gdal/make-geotiff-matrix.py
The expected heights are GDAL's own reading of its files, dumped as little-endian doubles, northernmost row first.
"""
import os
import tempfile
import zipfile

import numpy as np
from osgeo import gdal, osr

gdal.UseExceptions()
TYPES = {"int16": gdal.GDT_Int16, "float32": gdal.GDT_Float32, "float64": gdal.GDT_Float64}
NODATA = -9999
ROWS, COLUMNS = 30, 40
TARGET = "src/test/resources/bermwright/terrain/gridfile"


def heights():
    """Rolling ground with steps, negative heights and a few missing cells."""
    y, x = np.mgrid[0:ROWS, 0:COLUMNS].astype(float)
    z = 120 * np.sin(x / 7) * np.cos(y / 5) - 40 + 3.25 * np.hypot(x - 20, y - 11) + (x * 37 + y * 91) % 11 / 7
    z[3, 5:9] = np.nan
    z[29, 39] = np.nan
    z[0, 0] = np.nan
    return z


def source(kind, scaled):
    z = heights()
    dataset = gdal.GetDriverByName("MEM").Create("", COLUMNS, ROWS, 1, TYPES[kind])
    system = osr.SpatialReference()
    system.SetFromUserInput("IAU_2015:30135")
    dataset.SetProjection(system.ExportToWkt())
    dataset.SetGeoTransform((10000, 5, 0, 20150, 0, -5))
    band = dataset.GetRasterBand(1)
    if scaled:
        z = (z - 100) / 0.5
    if kind == "int16":
        z = np.where(np.isnan(z), NODATA, np.rint(z))
    band.SetNoDataValue(NODATA)
    band.WriteArray(np.where(np.isnan(z), NODATA, z))
    if scaled:
        band.SetScale(0.5)
        band.SetOffset(100)
    return dataset


def dump(path, missing):
    """GDAL's own reading: raw values, scaled, as doubles."""
    dataset = gdal.Open(path)
    band = dataset.GetRasterBand(1)
    z = band.ReadAsArray().astype(float)
    z[z == band.GetNoDataValue()] = np.nan
    z = z * (band.GetScale() or 1) + (band.GetOffset() or 0)
    assert np.isnan(z).sum() == missing
    return z.astype("<f8").tobytes()


def big_endian(little):
    """The same file with its header, directory and tag values in big-endian order.

    GDAL 3.6.2 swaps the bytes before it applies predictor 3, so its own big-endian files of that kind are spoiled:
    it does not read back what it wrote. A predictor 3 block holds byte planes, most significant first in either
    order, so swapping all the rest of a little-endian file makes the right big-endian one.
    """
    sizes = {1: 1, 2: 1, 3: 2, 4: 4, 5: 8, 12: 8, 16: 8}
    data = bytearray(little)
    big = little[2:4] == b"+\0"

    def swap(at, size):
        data[at:at + size] = data[at:at + size][::-1]

    def number(at, size):
        return int.from_bytes(little[at:at + size], "little")

    data[0:2] = b"MM"
    swap(2, 2)
    if big:
        swap(4, 2)
        swap(6, 2)
    width = 8 if big else 4
    at = number(8 if big else 4, width)
    swap(8 if big else 4, width)
    while at:
        count = number(at, 8 if big else 2)
        swap(at, 8 if big else 2)
        at += 8 if big else 2
        for _ in range(count):
            kind, values = number(at + 2, 2), number(at + 4, width)
            size = sizes[kind]
            place = at + 4 + width
            if size * values > width:
                target = number(place, width)
                swap(place, width)
                place = target
            for i in range(values):
                swap(place + i * size, size)
            swap(at, 2)
            swap(at + 2, 2)
            swap(at + 4, width)
            at += 4 + 2 * width
        after = number(at, width)
        swap(at, width)
        at = after
    return bytes(data)


def main():
    with tempfile.TemporaryDirectory() as folder, \
            zipfile.ZipFile(os.path.join(TARGET, "geotiff-matrix.zip"), "w", zipfile.ZIP_DEFLATED) as out:
        def add(name, data):
            out.writestr(zipfile.ZipInfo(name, (1980, 1, 1, 0, 0, 0)), data, zipfile.ZIP_DEFLATED)

        expected = {}
        for kind in TYPES:
            for compression in ("NONE", "DEFLATE", "LZW"):
                predictors = [1] if compression == "NONE" else [1, 2] if kind == "int16" else [1, 2, 3]
                for predictor in predictors:
                    for tiled in (False, True):
                        for big in (False, True):
                            for endian in ("LITTLE", "BIG"):
                                for scaled in (False, True):
                                    if scaled and (big or endian == "BIG" or predictor != predictors[-1]):
                                        continue
                                    name = "%s-%s-p%d-%s-%s-%s%s" % (
                                        kind, compression.lower(), predictor, "tiled" if tiled else "stripped",
                                        "big" if big else "classic", endian.lower(), "-scaled" if scaled else "")
                                    ours = predictor == 3 and endian == "BIG"
                                    options = ["COMPRESS=" + compression,
                                               "ENDIANNESS=" + ("LITTLE" if ours else endian),
                                               "BIGTIFF=" + ("YES" if big else "NO")]
                                    options += ["PREDICTOR=%d" % predictor] if predictor > 1 else []
                                    options += ["TILED=YES", "BLOCKXSIZE=16", "BLOCKYSIZE=16"] if tiled \
                                        else ["BLOCKYSIZE=7"]
                                    path = os.path.join(folder, name + ".tif")
                                    gdal.GetDriverByName("GTiff").CreateCopy(path, source(kind, scaled),
                                                                             options=options)
                                    if ours:
                                        data = open(path, "rb").read()
                                        open(path, "wb").write(big_endian(data))
                                    key = kind + ("-scaled" if scaled else "")
                                    data = dump(path, 6)
                                    assert expected.setdefault(key, data) == data, name
                                    add(name + ".tif", open(path, "rb").read())
        for key, data in expected.items():
            add("expected-" + key + ".f64", data)
        print(len(out.namelist()), "files")


main()
