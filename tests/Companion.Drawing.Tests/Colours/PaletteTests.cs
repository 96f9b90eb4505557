using System.Text.Json.Nodes;
using Companion.Drawing.Colours;

namespace Companion.Drawing.Tests.Colours;

public class PaletteTests
{
    private static readonly string Json = File.ReadAllText(Repository.File("configs/palette.json"));

    // Okabe & Ito (2008), "Color Universal Design": the eight colours.
    private static readonly Colour[] Eight =
    [
        .. new[] { "#000000", "#E69F00", "#56B4E9", "#009E73", "#F0E442", "#0072B2", "#D55E00", "#CC79A7" }.Select(Colour.Parse),
    ];

    internal static readonly IReadOnlyDictionary<string, Colour> Roles = new Dictionary<string, Colour>
    {
        ["look at"] = Palette.Standard.LookAt,
        ["first role"] = Palette.Standard.FirstRole,
        ["second role"] = Palette.Standard.SecondRole,
        ["link"] = Palette.Standard.Link,
        ["goes"] = Palette.Standard.Goes,
        ["follows"] = Palette.Standard.Follows,
        ["called"] = Palette.Standard.Called,
    };

    public static TheoryData<string> RoleNames => [.. Roles.Keys];

    public static TheoryData<Theme> Themes => [Theme.Light, Theme.Dark, Theme.Paper];

    [Fact]
    public void The_palette_that_ships_is_the_file_in_configs() => Assert.Equal(Palette.Read(Json), Palette.Standard);

    [Fact]
    public void Every_role_has_a_colour_of_the_eight_to_itself()
    {
        Assert.All(Roles.Values, colour => Assert.Contains(colour, Eight));
        Assert.Equal(Roles.Count, Roles.Values.Distinct().Count());
    }

    [Fact]
    public void A_missing_key_is_named()
    {
        var without = JsonNode.Parse(Json)!.AsObject();
        without.Remove("goes");

        var fault = Assert.Throws<FormatException>(() => Palette.Read(without.ToJsonString()));
        Assert.Contains("goes", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_grey_of_a_board_is_named()
    {
        var without = JsonNode.Parse(Json)!.AsObject();
        without["board"]!["dark"]!.AsObject().Remove("thinLine");

        var fault = Assert.Throws<FormatException>(() => Palette.Read(without.ToJsonString()));
        Assert.Contains("thinLine", fault.Message, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData("#D55E00", "vermilion")]
    [InlineData("{", "[")]
    public void A_file_that_is_no_palette_is_refused(string what, string instead) =>
        Assert.Throws<FormatException>(() => Palette.Read(Json.Replace(what, instead, StringComparison.Ordinal)));

    // WCAG 2.2, 1.4.11: 3:1 for shapes. Whatever lies behind a shape, one of its two edges stands out from it.
    [Fact]
    public void One_of_the_edges_stands_out_on_any_ground()
    {
        for (var level = 0; level <= 255; level++)
        {
            var ground = new Colour((byte)level, (byte)level, (byte)level);
            var best = Math.Max(ground.ContrastTo(Palette.Standard.DarkEdge), ground.ContrastTo(Palette.Standard.LightEdge));
            Assert.True(best >= 3, $"{ground}: {best}");
        }
    }

    // The edge that touches the colour is the dark one.
    [Theory]
    [MemberData(nameof(RoleNames))]
    public void Every_role_stands_out_from_the_edge_it_touches(string role) =>
        Assert.True(Roles[role].ContrastTo(Palette.Standard.DarkEdge) >= 3);

    // WCAG 2.2, 1.4.3: 4.5:1 for text.
    [Theory]
    [InlineData("first role")]
    [InlineData("second role")]
    [InlineData("follows")]
    [InlineData("called")]
    public void Text_on_a_plate_of_a_role_is_read(string role) =>
        Assert.True(Roles[role].ContrastTo(Palette.Standard.InkOn(Roles[role])) >= 4.5);

    [Theory]
    [MemberData(nameof(Themes))]
    public void Text_on_the_board_and_beside_it_is_read(Theme theme)
    {
        var board = Palette.Standard.Board[theme];
        (Colour Text, Colour Ground)[] pairs =
        [
            (board.Given, board.GivenCell),
            (board.Placed, board.Cell),
            (board.Mark, board.Cell),
            (board.Words, board.Panel),
            (board.Words, board.Surround),
            (board.QuietWords, board.Surround),
        ];

        Assert.All(pairs, pair => Assert.True(pair.Text.ContrastTo(pair.Ground) >= 4.5, $"{pair}"));
    }

    [Theory]
    [MemberData(nameof(Themes))]
    public void The_lines_of_the_board_stand_out(Theme theme)
    {
        var board = Palette.Standard.Board[theme];

        Assert.All([board.Cell, board.GivenCell], cell =>
        {
            Assert.True(board.ThinLine.ContrastTo(cell) >= 3);
            Assert.True(board.ThickLine.ContrastTo(cell) >= 3);
        });
    }
}
