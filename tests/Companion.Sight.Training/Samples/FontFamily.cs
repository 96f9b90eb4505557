using SkiaSharp;

namespace Companion.Sight.Samples;

/// <summary>The faces of one family: weights, widths, upright and italic.</summary>
/// <param name="Name">The family's package, without its scope.</param>
/// <param name="Faces">At least one; each has the digits.</param>
internal sealed record FontFamily(string Name, IReadOnlyList<SKTypeface> Faces)
{
    /// <summary>The families of an installed list.</summary>
    /// <param name="folder">Where it is installed: it has <c>node_modules</c>.</param>
    public static IReadOnlyList<FontFamily> In(string folder)
    {
        var modules = Path.Combine(folder, "node_modules");
        return
        [
            .. Directory.GetFiles(modules, "*.ttf", SearchOption.AllDirectories)
                .Order(StringComparer.Ordinal)
                .GroupBy(file => NameOf(Path.GetRelativePath(modules, file)))
                .Select(files => new FontFamily(files.Key, [.. files.Select(file => SKTypeface.FromFile(file)).Where(HasDigits)]))
                .Where(family => family.Faces.Count > 0),
        ];
    }

    private static string NameOf(string path)
    {
        var parts = path.Split(Path.DirectorySeparatorChar);
        return parts[0].StartsWith('@') ? parts[1] : parts[0];
    }

    private static bool HasDigits(SKTypeface? face)
    {
        if (face is null)
            return false;
        using var font = new SKFont(face);
        return font.ContainsGlyphs("0123456789");
    }
}
