using System.Text.Json;
using Companion.Drawing.Pictures;

namespace Companion.Drawing.Tests.Pictures;

/// <summary>The form in which pictures go to the pages, which read it by the type <c>Shape</c> of <c>overlay/src/wire.ts</c>.</summary>
public class WireTests
{
    private static readonly JsonSerializerOptions Web = new(JsonSerializerDefaults.Web);

    [Fact]
    public void Each_shape_says_its_kind_and_its_numbers_by_the_names_the_pages_read()
    {
        var picture = new Picture(
            [
                new HouseShape(0, 3, 9, 1),
                new CellShape(4, 3, true, "Q"),
                new GroupShape(4.5, 3.5, 6.5, 3.5),
                new LinkShape(1, 2, 3, 4, 2.5, 3.5, true),
                new MarkShape(4.5, 3.5, 5),
                new SlashShape(4.5, 3.5, 6),
                new LozengeShape(4.5, 3.5, 7),
                new CalledShape(4, 3, "1"),
            ],
            "Words");

        Assert.Equal(
            """
            {"shapes":[
            {"kind":"house","x":0,"y":3,"width":9,"height":1},
            {"kind":"cell","x":4,"y":3,"isSecond":true,"tab":"Q"},
            {"kind":"group","x1":4.5,"y1":3.5,"x2":6.5,"y2":3.5},
            {"kind":"link","x1":1,"y1":2,"x2":3,"y2":4,"bendX":2.5,"bendY":3.5,"isStrong":true},
            {"kind":"mark","x":4.5,"y":3.5,"digit":5},
            {"kind":"slash","x":4.5,"y":3.5,"digit":6},
            {"kind":"lozenge","x":4.5,"y":3.5,"digit":7},
            {"kind":"called","x":4,"y":3,"count":"1"}
            ],"caption":"Words"}
            """.Replace("\n", "", StringComparison.Ordinal),
            JsonSerializer.Serialize(picture, Web));
    }
}
