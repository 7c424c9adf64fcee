#!/usr/bin/env python3
"""Writes templates/colours/srgb.icc, the profile of sRGB (IEC 61966-2-1) that every plan carries.

Made with Little CMS 2.19 by way of Pillow 13.0.0 (`pip install pillow==13.0.0`). Little CMS gives
its built-in profile free of copyright. What depends on the day or the machine is set to what does
not: the date, the platform, and the version, which is that of ISO 15076-1:2005 (4.2), the newest
one that PDF/A-2 knows; the profile holds nothing that came later.
"""

import pathlib
import struct

from PIL import ImageCms

profile = bytearray(ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes())
profile[8:12] = bytes([4, 0x20, 0, 0])
profile[24:36] = struct.pack(">6H", 2026, 1, 1, 0, 0, 0)
profile[40:44] = bytes(4)

place = pathlib.Path(__file__).parents[2] / "templates" / "colours" / "srgb.icc"
place.write_bytes(profile)
