namespace Companion.Drawing.Tests.Pictures;

/// <summary>For each rule a board, and the picture of the first thing it finds there.</summary>
internal static class OneOfEachRule
{
    internal static IReadOnlyDictionary<string, (string Standing, string Picture)> Drawn { get; } =
        new Dictionary<string, (string, string)>
        {
            ["full-house"] = ("""
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            1 2 . | 4 5 6 | 7 8 9
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            """, """
            house r5
            cell first S r5c3
            lozenge r5c3=3
            """),
            ["hidden-single"] = ("r5c3=7", """
            house b4
            cell first S r5c3
            lozenge r5c3=7
            """),
            ["naked-single"] = ("r5c3=7 r5c6=27", """
            cell first S r5c3
            lozenge r5c3=7
            """),
            ["pointing"] = ("r2c1=5 r2c3=5 r2c6=5 r2c9=5", """
            house b1
            cell first L r2c1 r2c3
            mark r2c1=5 r2c3=5
            slash r2c6=5 r2c9=5
            """),
            ["claiming"] = ("r2c1=5 r2c3=5 r1c1=5 r3c2=5", """
            house r2
            cell first L r2c1 r2c3
            mark r2c1=5 r2c3=5
            slash r1c1=5 r3c2=5
            """),
            ["two-block-claiming"] = ("r1c1=5 r1c2=5 r3c3=5 r1c4=5 r3c5=5 r1c7=5 r3c8=5", """
            house b2 b3
            cell first L r1c4 r3c5 r1c7 r3c8
            mark r1c4=5 r1c7=5 r3c5=5 r3c8=5
            slash r1c1=5 r1c2=5 r3c3=5
            """),
            ["naked-pair"] = ("r1c1=58 r1c4=58 r1c6=15 r1c7=89", """
            house r1
            cell first M r1c1 r1c4
            mark r1c1=5 r1c1=8 r1c4=5 r1c4=8
            slash r1c6=5 r1c7=8
            """),
            ["hidden-pair"] = ("r1c1=1358 r1c4=589 r1c6=1 r1c7=3 r1c8=9", """
            house r1
            cell first M r1c1 r1c4
            mark r1c1=5 r1c1=8 r1c4=5 r1c4=8
            slash r1c1=1 r1c1=3 r1c4=9
            """),
            ["naked-triple"] = ("r1c1=25 r1c4=258 r1c9=58 r1c6=15 r1c7=239", """
            house r1
            cell first M r1c1 r1c4 r1c9
            mark r1c1=2 r1c1=5 r1c4=2 r1c4=5 r1c4=8 r1c9=5 r1c9=8
            slash r1c6=5 r1c7=2
            """),
            ["hidden-triple"] = ("r1c1=125 r4c1=158 r9c1=128 r2c1=1 r3c1=13", """
            house c1
            cell first M r1c1 r4c1 r9c1
            mark r1c1=2 r1c1=5 r4c1=5 r4c1=8 r9c1=2 r9c1=8
            slash r1c1=1 r4c1=1 r9c1=1
            """),
            ["x-wing"] = ("r2c3=5 r2c8=5 r7c3=5 r7c8=5 r1c3=5 r4c8=5 r9c8=5", """
            house r2 r7
            cell first B r2c3 r2c8 r7c3 r7c8
            link strong r2c3=5~r2c8=5 r7c3=5~r7c8=5
            mark r2c3=5 r2c8=5 r7c3=5 r7c8=5
            slash r1c3=5 r4c8=5 r9c8=5
            """),
            ["xy-wing"] = ("r5c3=25 r5c8=28 r4c1=58 r4c7=38 r4c9=18 r5c2=189", """
            cell first P r5c3
            cell second Q r5c8
            cell second R r4c1
            link weak r5c3=2~r5c8=2 r5c3=5~r4c1=5
            mark r4c1=5 r4c1=8 r5c3=2 r5c3=5 r5c8=2 r5c8=8
            slash r4c7=8 r4c9=8 r5c2=8
            """),
            ["xyz-wing"] = ("r5c3=258 r5c8=28 r4c1=58 r5c1=18 r5c2=89", """
            cell first P r5c3
            cell second Q r5c8
            cell second R r4c1
            link weak r5c3=2~r5c8=2 r5c3=5~r4c1=5
            mark r4c1=5 r4c1=8 r5c3=2 r5c3=5 r5c3=8 r5c8=2 r5c8=8
            slash r5c1=8 r5c2=8
            """),
            ["swordfish"] = ("r1c2=5 r1c5=5 r4c5=5 r4c7=5 r9c2=5 r9c7=5 r2c2=5 r6c7=5", """
            house r1 r4 r9
            cell first B r1c2 r1c5 r4c5 r4c7 r9c2 r9c7
            mark r1c2=5 r1c5=5 r4c5=5 r4c7=5 r9c2=5 r9c7=5
            slash r2c2=5 r6c7=5
            """),
            ["naked-quad"] = ("r1c1=12 r1c2=25 r2c3=58 r3c3=18 r1c3=19 r2c2=589", """
            house b1
            cell first M r1c1 r1c2 r2c3 r3c3
            mark r1c1=1 r1c1=2 r1c2=2 r1c2=5 r2c3=5 r2c3=8 r3c3=1 r3c3=8
            slash r1c3=1 r2c2=5 r2c2=8
            """),
            ["hidden-quad"] = ("r1c1=123 r1c2=2345 r2c3=358 r3c3=148 r2c1=3 r2c2=34 r1c3=4", """
            house b1
            cell first M r1c1 r1c2 r2c3 r3c3
            mark r1c1=1 r1c1=2 r1c2=2 r1c2=5 r2c3=5 r2c3=8 r3c3=1 r3c3=8
            slash r1c1=3 r1c2=3 r1c2=4 r2c3=3 r3c3=4
            """),
            ["jellyfish"] = ("r1c2=5 r1c5=5 r4c5=5 r4c7=5 r6c7=5 r6c9=5 r9c2=5 r9c9=5 r2c2=5 r7c7=5", """
            house r1 r4 r6 r9
            cell first B r1c2 r1c5 r4c5 r4c7 r6c7 r6c9 r9c2 r9c9
            mark r1c2=5 r1c5=5 r4c5=5 r4c7=5 r6c7=5 r6c9=5 r9c2=5 r9c9=5
            slash r2c2=5 r7c7=5
            """),
            ["finned-x-wing"] = ("r2c3=5 r2c8=5 r7c3=5 r7c8=5 r7c9=5 r8c8=5 r9c8=5", """
            house r2 r7
            cell first B r2c3 r2c8 r7c3 r7c8
            cell second F r7c9
            mark r2c3=5 r2c8=5 r7c3=5 r7c8=5 r7c9=5
            slash r8c8=5 r9c8=5
            """),
            ["finned-swordfish"] = ("r1c2=5 r1c4=5 r1c6=5 r4c5=5 r4c7=5 r9c2=5 r9c7=5 r2c5=5 r3c5=5", """
            house r1 r4 r9
            cell first B r1c2 r4c5 r4c7 r9c2 r9c7
            cell second F r1c4 r1c6
            mark r1c2=5 r1c4=5 r1c6=5 r4c5=5 r4c7=5 r9c2=5 r9c7=5
            slash r2c5=5 r3c5=5
            """),
            ["finned-jellyfish"] = ("r1c2=5 r1c5=5 r4c5=5 r4c7=5 r6c7=5 r6c9=5 r9c2=5 r9c9=5 r9c3=5 r7c2=5", """
            house r1 r4 r6 r9
            cell first B r1c2 r1c5 r4c5 r4c7 r6c7 r6c9 r9c2 r9c9
            cell second F r9c3
            mark r1c2=5 r1c5=5 r4c5=5 r4c7=5 r6c7=5 r6c9=5 r9c2=5 r9c3=5 r9c9=5
            slash r7c2=5
            """),
            ["remote-pairs"] = ("r2c1=58 r3c3=58 r3c7=58 r5c1=58 r5c7=589", """
            cell first X r2c1 r3c7
            cell second Y r3c3 r5c1
            link weak r2c1=5~r3c3=5 r2c1=8~r3c3=8 r2c1=5~r5c1=5 r2c1=8~r5c1=8 r3c7=5~r3c3=5 r3c7=8~r3c3=8
            mark r2c1=5 r2c1=8 r3c3=5 r3c3=8 r3c7=5 r3c7=8 r5c1=5 r5c1=8
            slash r5c7=5 r5c7=8
            """),
            ["two-strong-links"] = ("r1c3=5 r5c3=5 r5c7=5 r3c7=5 r1c8=5 r1c5=5 r3c1=5 r3c5=5 r5c5=5", """
            house c3 c7
            cell first E r1c3
            cell second I r5c3 r5c7
            cell first E r3c7
            link strong r1c3=5~r5c3=5
            link weak r5c3=5~r5c7=5
            link strong r3c7=5~r5c7=5
            mark r1c3=5 r3c7=5 r5c3=5 r5c7=5
            slash r1c8=5 r3c1=5
            """),
            ["w-wing"] = ("r2c2=58 r3c8=58 r7c2=5 r7c8=5 r2c7=89 r3c1=18", """
            house r7
            cell first E r2c2
            cell second I r7c2 r7c8
            cell first E r3c8
            link weak r2c2=5~r7c2=5
            link strong r7c2=5~r7c8=5
            link weak r7c8=5~r3c8=5
            mark r2c2=5 r2c2=8 r3c8=5 r3c8=8 r7c2=5 r7c8=5
            slash r2c7=8 r3c1=8
            """),
            ["simple-colouring"] = ("r1c1=5 r1c5=5 r5c1=5 r7c5=5 r7c7=5 r8c8=5 r5c8=5 r5c7=5 r6c9=5 r2c7=5 r2c8=5 r2c9=5", """
            house r1 r7 c1 c5 b9
            cell first X r1c1 r7c5 r8c8
            cell second Y r1c5 r5c1 r7c7
            link strong r1c1=5~r1c5=5 r7c5=5~r7c7=5 r1c1=5~r5c1=5 r1c5=5~r7c5=5 r7c7=5~r8c8=5
            mark r1c1=5 r1c5=5 r5c1=5 r7c5=5 r7c7=5 r8c8=5
            slash r5c8=5
            """),
            ["empty-rectangle"] = ("r1c3=5 r2c1=5 r2c3=5 r2c7=5 r5c7=5 r5c9=5 r5c3=5", """
            house c7 b1
            cell first H r1c3 r2c1 r2c3
            cell second I r2c7
            cell first E r5c7
            link strong r2c7=5~r5c7=5
            mark r1c3=5 r2c1=5 r2c3=5 r2c7=5 r5c7=5
            slash r5c3=5
            """),
            ["wxyz-wing"] = ("r3c3=1258 r1c1=18 r2c2=28 r3c8=58 r3c1=389 r3c2=3489", """
            cell first P r3c3
            cell second Q r1c1
            cell second R r2c2
            cell second T r3c8
            mark r1c1=1 r1c1=8 r2c2=2 r2c2=8 r3c3=1 r3c3=2 r3c3=5 r3c3=8 r3c8=5 r3c8=8
            slash r3c1=8 r3c2=8
            """),
            ["single-digit-chain"] = (
                "r1c1=5 r1c5=5 r4c5=5 r5c6=5 r5c7=5 r9c7=5 r9c1=5 r9c4=5 r9c2=5 r5c1=5 r7c5=5 r7c4=5", """
            house r1 c7 b5
            cell second Z r1c1
            cell first C r1c5 r4c5 r5c6 r5c7
            cell second Z r9c7
            link strong r1c1=5~r1c5=5
            link weak r1c5=5~r4c5=5
            link strong r4c5=5~r5c6=5
            link weak r5c6=5~r5c7=5
            link strong r5c7=5~r9c7=5
            mark r1c1=5 r1c5=5 r4c5=5 r5c6=5 r5c7=5 r9c7=5
            slash r9c1=5
            """),
            ["xy-chain"] = ("r1c1=12 r1c5=23 r4c5=34 r4c2=14 r2c2=156 r6c1=167", """
            cell second Z r1c1
            cell first C r1c5 r4c5
            cell second Z r4c2
            link strong r1c1=1~r1c1=2
            link weak r1c1=2~r1c5=2
            link strong r1c5=2~r1c5=3
            link weak r1c5=3~r4c5=3
            link strong r4c5=3~r4c5=4
            link weak r4c5=4~r4c2=4
            link strong r4c2=4~r4c2=1
            mark r1c1=1 r1c1=2 r1c5=2 r1c5=3 r4c2=1 r4c2=4 r4c5=3 r4c5=4
            slash r2c2=1 r6c1=1
            """),
            ["continuous-loop"] = ("r1c1=12 r1c5=23 r4c5=34 r4c1=14 r1c9=256 r9c1=167 r9c5=378", """
            cell first C r1c1 r4c1 r4c5 r1c5
            link strong r1c1=2~r1c1=1
            link weak r1c1=1~r4c1=1
            link strong r4c1=1~r4c1=4
            link weak r4c1=4~r4c5=4
            link strong r4c5=4~r4c5=3
            link weak r4c5=3~r1c5=3
            link strong r1c5=3~r1c5=2
            link weak r1c5=2~r1c1=2
            mark r1c1=1 r1c1=2 r1c5=2 r1c5=3 r4c1=1 r4c1=4 r4c5=3 r4c5=4
            slash r1c9=2 r9c1=1 r9c5=3
            """),
            ["alternating-inference-chain"] = (
                "r1c1=25 r1c8=589 r4c8=567 r4c1=267 r9c1=235 r8c8=67 r1c9=5 r6c9=7 r4c9=6", """
            house r4 c8
            cell second Z r1c1
            cell first C r1c8 r4c8
            cell second Z r4c1
            link strong r1c1=2~r1c1=5
            link weak r1c1=5~r1c8=5
            link strong r1c8=5~r4c8=5
            link weak r4c8=5~r4c8=7
            link strong r4c8=7~r4c1=7
            mark r1c1=2 r1c1=5 r1c8=5 r4c1=7 r4c8=5 r4c8=7
            slash r4c1=2
            """),
        };
}
