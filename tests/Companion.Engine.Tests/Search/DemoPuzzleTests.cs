using System.Text.Json;
using Companion.Engine.Rules;
using Companion.Engine.Search;
using Companion.Engine.Tests.Rules;

namespace Companion.Engine.Tests.Search;

/// <summary>The puzzle that the demo shows is our own, and is what its file says.</summary>
public sealed class DemoPuzzleTests
{
    private static readonly JsonElement Demo =
        JsonDocument.Parse(File.ReadAllText(Path.Combine(Repository.Root, "configs", "demo.json"))).RootElement;

    private static readonly Board Start = Board.Parse(Demo.GetProperty("grid").GetString()!);

    private static Ladder UpToFeatured => ShippedLadder.Ladder.WithoutUniqueness().UpTo(new(Demo.GetProperty("featured").GetString()!));

    [Fact]
    public void The_generator_makes_it_again_from_its_seed()
    {
        var options = new GeneratorOptions
        {
            Symmetry = Demo.GetProperty("symmetric").GetBoolean() ? GridSymmetry.HalfTurn : null,
            Clues = Demo.GetProperty("clues").GetInt32(),
        };

        Assert.Equal(Start.ToString(), Generator.Make(Demo.GetProperty("seed").GetUInt64(), options).Board.ToString());
        Assert.InRange(Start.Givens.Count, 24, 28);
    }

    [Fact]
    public void Everything_below_the_featured_rule_gets_stuck_and_with_it_the_puzzle_is_solved()
    {
        var rules = UpToFeatured.Rules;
        var stuck = Fixpoint.Of(Start, rules[..^1]);

        Assert.False(stuck.IsFull);
        Assert.True(Fixpoint.Of(stuck, rules).IsFull);
    }
}
