#!/usr/bin/env python3
"""Volume, surface and centre of mass of sample parts from a general-purpose geometry kernel.

Run by hand, never by the tests; its figures stand as constants in `src/solid/kernel_tests.rs`,
which builds the same parts.

    pip install cadquery-ocp-novtk
    python3 tests/kernel/volumes.py

All in millimetres, in the part's frame: x along length from the foot to the head, y along width
from near to far, z along thickness from the back to the face.
"""
import math
from importlib.metadata import version

from OCP.BRepAlgoAPI import BRepAlgoAPI_Cut, BRepAlgoAPI_Fuse
from OCP.BRepBuilderAPI import (
    BRepBuilderAPI_MakeEdge,
    BRepBuilderAPI_MakeFace,
    BRepBuilderAPI_MakeWire,
)
from OCP.BRepFilletAPI import BRepFilletAPI_MakeChamfer, BRepFilletAPI_MakeFillet
from OCP.BRepGProp import BRepGProp
from OCP.BRepPrimAPI import (
    BRepPrimAPI_MakeBox,
    BRepPrimAPI_MakeCone,
    BRepPrimAPI_MakeCylinder,
    BRepPrimAPI_MakePrism,
)
from OCP.Bnd import Bnd_Box
from OCP.BRepBndLib import BRepBndLib
from OCP.GC import GC_MakeArcOfCircle
from OCP.GProp import GProp_GProps
from OCP.TopAbs import TopAbs_EDGE
from OCP.TopExp import TopExp_Explorer
from OCP.TopoDS import TopoDS
from OCP.gp import gp_Ax2, gp_Dir, gp_Pnt, gp_Vec

# How much a tool stands out of the wood where it enters.
OUT = 1.0


def box(low, high):
    return BRepPrimAPI_MakeBox(gp_Pnt(*map(float, low)), gp_Pnt(*map(float, high))).Shape()


def block(length=200, width=100, thickness=20):
    return box((0, 0, 0), (length, width, thickness))


def cylinder(at, way, diameter, length):
    """From `at`, `length` along `way`."""
    frame = gp_Ax2(gp_Pnt(*map(float, at)), gp_Dir(*map(float, way)))
    return BRepPrimAPI_MakeCylinder(frame, diameter / 2, float(length)).Shape()


def cone(at, way, mouth, bore):
    """A cone of 90 degrees from the mouth's diameter down to the bore's."""
    frame = gp_Ax2(gp_Pnt(*map(float, at)), gp_Dir(*map(float, way)))
    return BRepPrimAPI_MakeCone(frame, mouth / 2, bore / 2, (mouth - bore) / 2).Shape()


def cut(shape, *tools):
    """One tool at a time."""
    for tool in tools:
        shape = BRepAlgoAPI_Cut(shape, tool).Shape()
    return shape


def prism(pieces, height):
    """Lines `(from, to)` and arcs `(from, through, to)` of the plane z = 0, raised."""
    wire = BRepBuilderAPI_MakeWire()
    for points in pieces:
        p = [gp_Pnt(float(x), float(y), 0.0) for x, y in points]
        if len(p) == 2:
            wire.Add(BRepBuilderAPI_MakeEdge(*p).Edge())
        else:
            wire.Add(BRepBuilderAPI_MakeEdge(GC_MakeArcOfCircle(*p).Value()).Edge())
    face = BRepBuilderAPI_MakeFace(wire.Wire()).Face()
    return BRepPrimAPI_MakePrism(face, gp_Vec(0, 0, float(height))).Shape()


def as_edge(shape):
    for name in ("Edge_s", "Edge"):
        if hasattr(TopoDS, name):
            return getattr(TopoDS, name)(shape)
    return shape


def edges_at(shape, low, high):
    """The edges that lie in a box."""
    found = []
    explorer = TopExp_Explorer(shape, TopAbs_EDGE)
    while explorer.More():
        around = Bnd_Box()
        BRepBndLib.Add_s(explorer.Current(), around)
        a, b = around.CornerMin(), around.CornerMax()
        inside = all(
            l - 1e-3 <= p and q <= h + 1e-3
            for l, h, p, q in zip(
                low, high, (a.X(), a.Y(), a.Z()), (b.X(), b.Y(), b.Z())
            )
        )
        if inside:
            found.append(as_edge(explorer.Current()))
        explorer.Next()
    return found


def broken(shape, low, high, size, maker):
    make = maker(shape)
    make.Add(size, edges_at(shape, low, high)[0])
    return make.Shape()


def pocket_screw_hole(thickness, position, diameter, pilot, entry):
    """Into the back (z = 0) from the foot (x = 0); the axis leaves the foot at half thickness."""
    drop = thickness / 2
    length = math.hypot(entry, drop)
    sine, cosine = drop / length, entry / length
    shoulder = max(0.8 * (drop - diameter / 2 * cosine) / sine, 3.0)
    way = (cosine, 0.0, -sine)
    at = lambda along: (along * cosine, position, drop - along * sine)
    return (
        cylinder(at(shoulder), way, diameter, 200),
        cylinder(at(-20.0), way, pilot, 20.0 + shoulder),
    )


def parts():
    face = lambda x, y, d, depth: cylinder((x, y, 20 + OUT), (0, 0, -1), d, depth + OUT)
    near = lambda x, z, d, depth: cylinder((x, -OUT, z), (0, 1, 0), d, depth + OUT)
    yield "through holes", cut(block(), face(50, 50, 10, 30), face(150, 30, 12, 30))
    yield "counterbored blind hole", cut(block(), face(50, 50, 10, 15), face(50, 50, 24, 6))
    yield "countersunk hole", cut(
        block(), face(50, 50, 5, 30), cone((50, 50, 20), (0, 0, -1), 15, 5)
    )
    yield "hole grid", cut(
        block(600, 300, 18),
        *[
            cylinder((30 * (i + 0.5), 30 * (j + 0.5), -1), (0, 0, 1), 20, 20)
            for i in range(20)
            for j in range(10)
        ],
    )
    yield "groove", cut(block(), box((-1, 40, 14), (201, 60, 21)))
    yield "stopped dado", cut(block(), box((50, -1, 14), (68, 70, 21)))
    yield "rabbet", cut(block(), box((-1, 88, 12), (201, 101, 21)))
    yield "notches", cut(
        block(), box((150, -1, -1), (201, 30, 21)), box((60, 80, -1), (100, 101, 21))
    )
    inner, size = 40.0, 160.0
    root = size - (size - inner) / math.sqrt(2)
    yield "bracket", prism(
        [
            ((0, 0), (size, 0)),
            ((size, 0), (size, inner)),
            ((size, inner), (root, root), (inner, size)),
            ((inner, size), (0, size)),
            ((0, size), (0, 0)),
        ],
        18,
    )
    chamfered = broken(
        block(), (0, 0, 20), (200, 0, 20), 8.0, BRepFilletAPI_MakeChamfer
    )
    yield "chamfer and round-over", broken(
        chamfered, (0, 100, 20), (200, 100, 20), 5.0, BRepFilletAPI_MakeFillet
    )
    yield "rounded corner", broken(
        block(), (200, 100, 0), (200, 100, 20), 30.0, BRepFilletAPI_MakeFillet
    )
    yield "edge holes through a groove", cut(
        block(),
        box((-1, 20, 8), (201, 30, 21)),
        near(60, 10, 8, 40),
        near(140, 10, 8, 25),
    )
    yield "round-ended mortise", cut(
        block(),
        BRepAlgoAPI_Fuse(
            BRepAlgoAPI_Fuse(
                box((45, -1, 5), (75, 25, 15)), cylinder((45, -1, 10), (0, 1, 0), 10, 26)
            ).Shape(),
            cylinder((75, -1, 10), (0, 1, 0), 10, 26),
        ).Shape(),
    )
    yield "crossing dado, groove and hole", cut(
        block(),
        box((50, -1, 14), (68, 101, 21)),
        box((-1, 40, 14), (201, 60, 21)),
        face(59, 50, 14, 30),
    )
    yield "holes in the head", cut(
        block(),
        *[cylinder((201, y, 10), (-1, 0, 0), 8, 31) for y in (30, 70)],
    )
    yield "countersunk hole in an edge", cut(
        block(), near(100, 10, 5, 30), cone((100, 0, 10), (0, 1, 0), 11, 5)
    )
    yield "pocket-screw hole", cut(block(), *pocket_screw_hole(20, 50, 9.5, 3.7, 34))
    yield "edge hole into a face hole", cut(
        block(), face(100, 50, 14, 30), near(100, 10, 8, 50)
    )
    wedge = lambda corners, height: prism(
        list(zip(corners, corners[1:] + corners[:1])), height
    )
    mitre = wedge([(200, 100), (100, 100), (200, 0)], 20)
    yield "mitred end", cut(block(), mitre)
    yield "mitred end through a hole", cut(block(), face(150, 50, 16, 30), mitre)
    yield "two tapers and a groove", cut(
        block(),
        box((-1, 40, 14), (201, 48, 21)),
        wedge([(0, 0), (150, 0), (0, 10)], 20),
        wedge([(200, 100), (0, 100), (200, 80)], 20),
    )
    yield "tenon", cut(
        block(),
        box((170, -1, -1), (201, 101, 4)),
        box((170, -1, 16), (201, 101, 21)),
        box((170, -1, -1), (201, 20, 21)),
        box((170, 80, -1), (201, 101, 21)),
    )
    rod = cylinder((0, 10, 10), (1, 0, 0), 20, 300)
    yield "bar with a cross hole", cut(rod, cylinder((150, 10, 30), (0, 0, -1), 8, 60))


def measure(shape):
    volume, surface = GProp_GProps(), GProp_GProps()
    # The last figure is the relative error asked of the integration.
    BRepGProp.VolumeProperties_s(shape, volume, 1e-10)
    BRepGProp.SurfaceProperties_s(shape, surface, 1e-10)
    centre = volume.CentreOfMass()
    return volume.Mass(), surface.Mass(), (centre.X(), centre.Y(), centre.Z())


def main():
    print(f"# Open CASCADE through cadquery-ocp-novtk {version('cadquery-ocp-novtk')}")
    print(f"# {'part':30} {'volume mm3':>18} {'surface mm2':>18}  centre of mass mm")
    for name, shape in parts():
        volume, area, centre = measure(shape)
        at = " ".join(f"{part:12.6f}" for part in centre)
        print(f"{name:32} {volume:18.6f} {area:18.6f}  {at}", flush=True)


if __name__ == "__main__":
    main()
