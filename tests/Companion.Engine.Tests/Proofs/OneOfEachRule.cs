using Companion.Engine.Proofs;

namespace Companion.Engine.Tests.Proofs;

/// <summary>One deduction of each rule, made by hand: the patterns that the wording and the checker are tested with.</summary>
internal static class OneOfEachRule
{
    internal static IReadOnlyDictionary<string, string> Drawn { get; } = new Dictionary<string, string>
    {
        ["full-house"] = "full-house 7 single r5c3 in r5 places r5c3=7",
        ["hidden-single"] = "hidden-single 7 single r5c3 in r5 places r5c3=7 rests r5=7",
        ["naked-single"] = "naked-single 7 single r5c3 places r5c3=7 rests r5c3=-7",
        ["pointing"] = "pointing 5 locked r2c1 r2c3 in b1 removes r2c6=5 r2c9=5 rests b1-r2=5",
        ["claiming"] = "claiming 5 locked r2c1 r2c3 in r2 removes r1c1=5 r3c2=5 rests r2-b1=5",
        ["two-block-claiming"] = """
            two-block-claiming 5 locked r1c1 r1c2 r3c3 r1c4 r3c5 in b1 b2 removes r1c7=5 r3c8=5 r3c9=5
            rests b1-r1-r3=5 b2-r1-r3=5
            """,
        ["naked-pair"] = "naked-pair 58 subset r1c1 r1c4 in r1 removes r1c6=5 r1c7=58 rests r1c1=-58 r1c4=-58",
        ["hidden-pair"] = "hidden-pair 58 subset r1c1 r1c4 in r1 removes r1c1=13 r1c4=9 rests r1=58",
        ["naked-triple"] = """
            naked-triple 258 subset r1c1 r1c4 r1c9 in r1 removes r1c6=5 r1c7=28 rests r1c1=-258 r1c4=-258 r1c9=-258
            """,
        ["hidden-triple"] = "hidden-triple 258 subset r1c1 r4c1 r9c1 in c1 removes r1c1=1 r4c1=1 r9c1=1 rests c1=258",
        ["x-wing"] = "x-wing 5 base r2c3 r2c8 r7c3 r7c8 in r2 r7 removes r1c3=5 r4c8=5 r9c8=5 rests r2=5 r7=5",
        ["xy-wing"] = """
            xy-wing 258 pivot r5c3 pincer r5c8 r4c1 removes r4c7=8 r4c9=8 r5c2=8 rests r5c3=-25 r5c8=-28 r4c1=-58
            """,
        ["xyz-wing"] = "xyz-wing 258 pivot r5c3 pincer r5c8 r4c1 removes r5c1=8 r5c2=8 rests r5c3=-258 r5c8=-28 r4c1=-58",
        ["swordfish"] = """
            swordfish 5 base r1c2 r1c5 r4c5 r4c7 r9c2 r9c7 in r1 r4 r9 removes r2c2=5 r6c7=5
            rests r1-c2-c5-c7=5 r4-c2-c5-c7=5 r9-c2-c5-c7=5
            """,
        ["naked-quad"] = """
            naked-quad 1258 subset r1c1 r1c2 r2c3 r3c3 in b1 removes r1c3=1 r2c2=58
            rests r1c1=-1258 r1c2=-1258 r2c3=-1258 r3c3=-1258
            """,
        ["hidden-quad"] = """
            hidden-quad 1258 subset r1c1 r1c2 r2c3 r3c3 in b1 removes r1c1=3 r1c2=34 r2c3=3 r3c3=4 rests b1=1258
            """,
        ["jellyfish"] = """
            jellyfish 5 base r1c2 r1c5 r4c5 r4c7 r6c7 r6c9 r9c2 r9c9 in r1 r4 r6 r9 removes r2c2=5 r7c7=5
            rests r1-c2-c5-c7-c9=5 r4-c2-c5-c7-c9=5 r6-c2-c5-c7-c9=5 r9-c2-c5-c7-c9=5
            """,
        ["remote-pairs"] = """
            remote-pairs 58 firstcolour r2c1 r3c7 secondcolour r3c3 r5c1 removes r5c7=58
            rests r2c1=-58 r3c7=-58 r3c3=-58 r5c1=-58
            """,
        ["two-strong-links"] = """
            two-strong-links 5 end r1c3 between r5c3 r5c7 end r3c7 in c3 c7 removes r1c8=5 r3c1=5 rests c3=5 c7=5
            """,
        ["w-wing"] = """
            w-wing 58 end r2c2 between r7c2 r7c8 end r3c8 in r7 removes r2c7=8 r3c1=8 rests r2c2=-58 r3c8=-58 r7=5
            """,
        ["simple-colouring"] = """
            simple-colouring 5 firstcolour r1c1 r7c5 r8c8 secondcolour r1c5 r5c1 r7c7 in r1 r7 c1 c5 b9 removes r5c8=5
            rests r1=5 r7=5 c1=5 c5=5 b9=5
            """,
        ["empty-rectangle"] = """
            empty-rectangle 5 cross r1c3 r2c1 r2c3 between r2c7 end r5c7 in c7 b1 removes r5c3=5 rests b1-r2-c3=5 c7=5
            """,
        ["wxyz-wing"] = """
            wxyz-wing 1258 pivot r3c3 pincer r1c1 r2c2 r3c8 removes r3c1=8 r3c2=8
            rests r3c3=-1258 r1c1=-128 r2c2=-128 r3c8=-58
            """,
        ["finned-x-wing"] = """
            finned-x-wing 5 base r2c3 r2c8 r7c3 r7c8 fin r7c9 in r2 r7 removes r8c8=5 r9c8=5 rests r2=5 r7-b9=5
            """,
        ["finned-swordfish"] = """
            finned-swordfish 5 base r1c2 r4c5 r4c7 r9c2 r9c7 fin r1c4 r1c6 in r1 r4 r9 removes r2c5=5 r3c5=5
            rests r1-c2-c5-c7-b2=5 r4-c2-c5-c7=5 r9-c2-c5-c7=5
            """,
        ["finned-jellyfish"] = """
            finned-jellyfish 5 base r1c2 r1c5 r4c5 r4c7 r6c7 r6c9 r9c2 r9c9 fin r9c3 in r1 r4 r6 r9 removes r7c2=5
            rests r1-c2-c5-c7-c9=5 r4-c2-c5-c7-c9=5 r6-c2-c5-c7-c9=5 r9-c2-c5-c7-c9-b7=5
            """,
        ["single-digit-chain"] = """
            single-digit-chain 5 chainend r1c1 chain r1c5 r4c5 r5c6 r5c7 chainend r9c7 in r1 c7 b5 removes r9c1=5
            rests r1=5 c7=5 b5=5 links r1c1=5 = r1c5=5 - r4c5=5 = r5c6=5 - r5c7=5 = r9c7=5
            """,
        ["xy-chain"] = """
            xy-chain 1234 chainend r1c1 chain r1c5 r4c5 chainend r4c2 removes r2c2=1 r6c1=1
            rests r1c1=-12 r1c5=-23 r4c5=-34 r4c2=-14
            links r1c1=1 = r1c1=2 - r1c5=2 = r1c5=3 - r4c5=3 = r4c5=4 - r4c2=4 = r4c2=1
            """,
        ["continuous-loop"] = """
            continuous-loop 1234 chain r1c1 r1c5 r4c5 r4c1 removes r1c9=2 r9c1=1 r9c5=3
            rests r1c1=-12 r1c5=-23 r4c5=-34 r4c1=-14
            links r1c1=1 = r1c1=2 - r1c5=2 = r1c5=3 - r4c5=3 = r4c5=4 - r4c1=4 = r4c1=1 - r1c1=1
            """,
        ["alternating-inference-chain"] = """
            alternating-inference-chain 257 chainend r1c1 chain r1c8 r4c8 chainend r4c1 in r4 c8 removes r4c1=2
            rests r1c1=-25 c8-r1-r4=5 r4-c1-c8=7
            links r1c1=2 = r1c1=5 - r1c8=5 = r4c8=5 - r4c8=7 = r4c1=7
            """,
        ["grouped-chain"] = """
            grouped-chain 15 chainend r1c1 chain r1c7 r1c8 r1c9 r3c9 r7c9 chainend r7c1 in r1 r7 removes r1c1=5 r7c1=1
            rests r1=1 r3c9=-15 r7=5
            links r1c1=1 = r1c7+r1c8+r1c9=1 - r3c9=1 = r3c9=5 - r7c9=5 = r7c1=5
            """,
        ["two-sector-disjoint-subsets"] = """
            two-sector-disjoint-subsets 1258 pivot r3c1 r3c3 pincer r3c5 r2c2 in r3 b1 removes r2c3=5 r3c2=128 r3c8=1
            rests r3c1=-1258 r3c3=-1258 r3c5=-12 r2c2=-58
            """,
        ["almost-locked-set-ring"] = """
            almost-locked-set-ring 12567 set r1c1 r4c1 r8c1 r1c5 r4c5 sets r1c1+r4c1+r8c1 r1c5+r4c5
            removes r1c3=1 r4c9=2 r5c1=56 r9c5=7 rests r1c1=-156 r4c1=-256 r8c1=-56 r1c5=-17 r4c5=-27
            links r1c1=1 = r4c1=2 - r4c5=2 = r1c5=1 - r1c1=1
            """,
        ["almost-locked-set-pair"] = """
            almost-locked-set-pair 12345 set r1c1 r1c2 r5c1 r5c5 r5c9 sets r1c1+r1c2 r5c1+r5c5+r5c9 removes r1c9=3
            rests r1c1=-123 r1c2=-23 r5c1=-145 r5c5=-45 r5c9=-345
            links r1c1+r1c2=3 = r1c1=1 - r5c1=1 = r5c9=3
            """,
        ["almost-locked-set-triple"] = """
            almost-locked-set-triple 123456 set r1c1 r1c2 r5c1 r5c4 r5c5 r6c6 sets r1c1+r1c2 r5c1+r5c4+r5c5 r6c6 removes r1c6=5
            rests r1c1=-125 r1c2=-25 r5c1=-136 r5c4=-346 r5c5=-346 r6c6=-45
            links r1c1+r1c2=5 = r1c1=1 - r5c1=1 = r5c4+r5c5=4 - r6c6=4 = r6c6=5
            """,
        ["almost-locked-set-blossom"] = """
            almost-locked-set-blossom 12389 start r5c5 set r5c1 r1c5 r9c1 r9c5 sets r5c1 r1c5 r9c1+r9c5 removes r1c1=9
            rests r5c5=-123 r5c1=-19 r1c5=-29 r9c1=-89 r9c5=-38
            links r5c5=1 - r5c1=1 = r5c1=9 - r1c1=9, r5c5=2 - r1c5=2 = r1c5=9 - r1c1=9, r5c5=3 - r9c5=3 = r9c1=9 - r1c1=9
            """,
        ["almost-locked-set-chain"] = """
            almost-locked-set-chain 5679 chainend r1c1 chain r1c8 set r4c8 r5c7 r6c8 chainend r5c3 sets r4c8+r5c7+r6c8 in r1
            removes r3c3=5 r4c1=5 rests r1=5 r4c8=-567 r5c7=-79 r6c8=-67 r5c3=-59
            links r1c1=5 = r1c8=5 - r4c8=5 = r5c7=9 - r5c3=9 = r5c3=5
            """,
        ["cell-forcing-chain"] = """
            cell-forcing-chain 1239 start r5c5 chain r5c1 r1c5 r2c5 r2c8 r1c8 in r2 removes r1c1=9
            rests r5c5=-123 r5c1=-19 r1c5=-29 r1c8=-39 r2=3
            links r5c5=1 - r5c1=1 = r5c1=9 - r1c1=9, r5c5=2 - r1c5=2 = r1c5=9 - r1c1=9,
                r5c5=3 - r2c5=3 = r2c8=3 - r1c8=3 = r1c8=9 - r1c1=9
            """,
        ["house-forcing-chain"] = """
            house-forcing-chain 59 start r1c1 r1c5 r1c9 chain r4c1 r6c5 r8c6 r8c9 r7c6 in r1 r8 removes r4c6=9
            rests r1=5 r4c1=-59 r6c5=-59 r7c6=-59 r8=5
            links r1c1=5 - r4c1=5 = r4c1=9 - r4c6=9, r1c5=5 - r6c5=5 = r6c5=9 - r4c6=9,
                r1c9=5 - r8c9=5 = r8c6=5 - r7c6=5 = r7c6=9 - r4c6=9
            """,
        ["joint-forcing-chain"] = """
            joint-forcing-chain 1234579 start r5c3 r5c7 chain r1c3 r5c1 r1c7 r5c5 base r6c2 r6c9 r9c2 r9c5 r9c9 chain r1c9 in r6 r9
            removes r1c1=9 rests r5c3=-125 r5c7=-345 r1c3=-19 r5c1=-29 r1c7=-39 r5c5=-47 r1c9=-79 r6-c2-c9=7 r9-c2-c5-c9=7
            links r5c3=5 - r5c7=5, r5c3=1 - r1c3=1 = r1c3=9 - r1c1=9, r5c3=2 - r5c1=2 = r5c1=9 - r1c1=9,
                r5c7=3 - r1c7=3 = r1c7=9 - r1c1=9,
                r5c7=4 - r5c5=4 = r5c5=7 - r9c5=7 = r6c9+r9c9=7 - r1c9=7 = r1c9=9 - r1c1=9
            """,
        ["forcing-net"] = """
            forcing-net 123 start r1c1 chain r1c4 r7c2 r4c1 chainend r4c2 in r7 removes r1c1=1
            rests r1c4=-12 r7-c4=2 r4c1=-13 r4c2=-23
            links r1c1=1 - r1c4=1 = r1c4=2 - r7c4=2 = r7c2=2, r1c1=1 - r4c1=1 = r4c1=3 - r4c2=3, r7c2=2 - r4c2=2
            supposes r1c1=1 r1c4=2 r7:r7c2=2 r4c1=3 r4c2=23
            """,
        ["nested-forcing-net"] = """
            nested-forcing-net 12345689 start r1c1 chain r1c5 r1c7 r1c4 r7c4 r7c7 r4c7 r4c4 chainend r9c5 removes r1c1=1
            rests r1c5=-19 r1c7=-159 r1c4=-1259 r7c4=-234 r7c7=-356 r4c7=-568 r4c4=-238 r9c5=-49
            links r7c4=3 - r7c7=3 = r7c7=6 - r4c7=6 = r4c7=8 - r4c4=8, r7c4=3 - r4c4=3, r7c4=3 = r7c4=4 - r9c5=4
            supposes r1c1=1 r1c5=9 r1c7=5 r1c4=2 r7c4=3/r7c7=6/r4c7=8/r4c4=238 r7c4=4 r9c5=49
            """,
    };

    /// <summary>The same for the rules that assume one solution.</summary>
    internal static IReadOnlyDictionary<string, string> AssumingOneSolution { get; } = new Dictionary<string, string>
    {
        ["unique-rectangle"] = """
            unique-rectangle 58 floor r1c1 r1c4 r2c1 roof r2c4 removes r2c4=58 rests r1c1=-58 r1c4=-58 r2c1=-58
            """,
        ["unique-rectangle-with-extra-digit"] = """
            unique-rectangle-with-extra-digit 358 floor r1c1 r2c1 roof r1c4 r2c4 removes r3c5=3 r7c4=3
            rests r1c1=-58 r2c1=-58 r1c4=-358 r2c4=-358
            """,
        ["unique-rectangle-with-subset"] = """
            unique-rectangle-with-subset 1358 floor r1c1 r1c4 roof r2c1 r2c4 subset r2c7 in r2 removes r2c5=1 r2c9=13
            rests r1c1=-58 r1c4=-58 r2c1=-1358 r2c4=-1358 r2c7=-13
            """,
        ["hidden-unique-rectangle"] = """
            hidden-unique-rectangle 58 floor r1c1 roof r1c4 r2c1 r2c4 in r2 c4 removes r2c4=8 rests r1c1=-58 r2=5 c4=5
            """,
        ["bivalue-universal-grave"] = """
            bivalue-universal-grave 149 floor r5c8 r5c9 r7c6 r7c8 r8c6 r8c9 roof r8c8 places r8c8=4
            rests r5c8=-49 r5c9=-49 r7c6=-14 r7c8=-14 r8c6=-14 r8c9=-49 r8c8=-149
            """,
    };

    internal static IEnumerable<Deduction> All => Drawn.Values.Select(drawn => DrawnDeduction.Read(drawn));

    /// <summary>The deduction on a board that shows it and nothing else: blank but for what it rests on.</summary>
    internal static (Board Board, Deduction Deduction) On(string rule)
    {
        var deduction = Drawn.TryGetValue(rule, out var drawn)
            ? DrawnDeduction.Read(drawn)
            : DrawnDeduction.Read(AssumingOneSolution[rule], assumesOneSolution: true);
        return (rule == "full-house" ? RowFiveButColumnThree : Board.Blank.Remove(deduction.RestsOn), deduction);
    }

    private static Board RowFiveButColumnThree { get; } = Board.Parse("""
        .........
        .........
        .........
        .........
        12.345689
        .........
        .........
        .........
        .........
        """);
}
