using Companion.Sight.Tests.Digits;

namespace Companion.Sight.Tests.Boards;

/// <summary>The families that no network of ours was ever trained on, as npm brings them.</summary>
internal static class FontFiles
{
    private static string Packages => Path.Combine(HeldOutFonts.Folder, "node_modules", "@expo-google-fonts");

    /// <summary>Their names, as a page says them.</summary>
    public static IReadOnlyList<string> Families => field ??=
        [.. Directory.GetDirectories(Packages).Where(folder => Face(folder, 400) is not null).Select(folder => Path.GetFileName(folder)).Order(StringComparer.Ordinal)];

    /// <summary>A family for a page, in each weight that boards have, as far as there is one.</summary>
    /// <param name="family">Its name.</param>
    public static string FontFaces(string family)
    {
        var folder = Path.Combine(Packages, family);
        return string.Concat(
            from weight in (int[])[400, 700]
            let face = Face(folder, weight)
            where face is not null
            select $"@font-face{{font-family:{family};font-weight:{weight};src:url(data:font/ttf;base64,{Convert.ToBase64String(File.ReadAllBytes(face))})}}");
    }

    private static string? Face(string folder, int weight) =>
        Directory.GetDirectories(folder, $"{weight}*").Where(face => !face.Contains("Italic", StringComparison.Ordinal))
            .SelectMany(face => Directory.GetFiles(face, "*.ttf")).FirstOrDefault();
}
