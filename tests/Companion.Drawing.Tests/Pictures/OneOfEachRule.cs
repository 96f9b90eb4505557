namespace Companion.Drawing.Tests.Pictures;

/// <summary>For each rule a board, and the picture of the first thing it finds there, as <c>RulePictures.txt</c> has them.</summary>
internal static class OneOfEachRule
{
    internal static IReadOnlyDictionary<string, (string Standing, string Picture)> Drawn { get; } = Read();

    // A section for each rule, headed "# rule", after a paragraph about the file.
    private static Dictionary<string, (string Standing, string Picture)> Read() =>
        File.ReadAllText(Repository.File("tests/Companion.Drawing.Tests/Pictures/RulePictures.txt"))
            .ReplaceLineEndings("\n")
            .Split("\n# ")
            .Skip(1)
            .Select(section => section.TrimEnd().Split('\n', count: 2))
            .ToDictionary(section => section[0], section => StandingAndPicture(section[1].Split("\nshows\n")));

    private static (string Standing, string Picture) StandingAndPicture(string[] parts) => (parts[0], parts[1]);
}
