using System.Collections.Immutable;
using Companion.Drawing.Pictures;

namespace Companion.Drawing.Stills;

/// <summary>The kinds of shape in a picture, each with what it means.</summary>
internal static class Legend
{
    internal static ImmutableArray<LegendEntry> Of(Picture picture) =>
    [
        .. Sample<HouseShape>(picture, "where to look", _ => new HouseShape(0, 0, 1.5, 1)),
        .. Cells(picture),
        .. Sample<GroupShape>(picture, "group of candidates", _ => new GroupShape(0.3, 0.5, 1.2, 0.5)),
        .. Links(picture, isStrong: true, "strong link"),
        .. Links(picture, isStrong: false, "weak link"),
        .. Sample<MarkShape>(picture, "candidate of the pattern", mark => mark with { X = 0.5, Y = 0.5 }),
        .. Sample<SlashShape>(picture, "candidate that goes", slash => slash with { X = 0.5, Y = 0.5 }),
        .. Sample<LozengeShape>(picture, "digit that follows", lozenge => lozenge with { X = 0.5, Y = 0.5 }),
        .. Sample<CalledShape>(picture, "found by so many viewers", called => called with { X = 0, Y = 0 }),
    ];

    private static IEnumerable<LegendEntry> Sample<T>(Picture picture, string words, Func<T, Shape> sample)
        where T : Shape => picture.Shapes.OfType<T>().Take(1).Select(shape => new LegendEntry(sample(shape), words));

    private static IEnumerable<LegendEntry> Cells(Picture picture)
    {
        foreach (var role in picture.Shapes.OfType<CellShape>().GroupBy(cell => Tabs.MeaningOf(cell.Tab)))
        {
            var tabs = role.Select(cell => cell.Tab).Distinct().ToList();
            var name = tabs.Count > 1 ? role.Key + "s" : role.Key;
            yield return new(role.First() with { X = 0, Y = 0 }, $"{string.Join(", ", tabs)}: {name}");
        }
    }

    private static IEnumerable<LegendEntry> Links(Picture picture, bool isStrong, string words) =>
        picture.Shapes.OfType<LinkShape>().Where(link => link.IsStrong == isStrong).Take(1)
            .Select(_ => new LegendEntry(new LinkShape(0.15, 0.5, 1.35, 0.5, 0.75, 0.5, isStrong), words));
}
