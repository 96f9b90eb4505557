using System.Text.RegularExpressions;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Architecture;

/// <summary>What stands nowhere in the sources, each with what to write instead.</summary>
public sealed class BanTests
{
    private static readonly IReadOnlyList<(string Path, string Text)> Sources =
    [
        .. new[] { "src", "tests", "overlay" }
            .SelectMany(folder => Directory.EnumerateFiles(Repository.In(folder), "*", SearchOption.AllDirectories))
            .Where(file => Path.GetExtension(file) is ".cs" or ".ts" or ".tsx" or ".css")
            .Select(file => (Path.GetRelativePath(Repository.Root, file).Replace('\\', '/'), File.ReadAllText(file)))
            .Where(source => !Regex.IsMatch(source.Item1, "(^|/)(node_modules|bin|obj|wwwroot)/") && !source.Item1.EndsWith("/BanTests.cs", StringComparison.Ordinal)),
    ];

    public static TheoryData<string, string, string> Bans => new()
    {
        // pattern, an example of it, what to write instead
        { @"\bDateTime(Offset)?\.(Utc)?Now\b|\bDateTime\.Today\b", "DateTimeOffset.UtcNow", "Take the time from a TimeProvider that comes in." },
        { @"\bnew Random\(\)|\bRandom\.Shared\b", "Random.Shared.Next()", "Give Random a seed that comes in." },
        { @"\bThread\.Sleep\(", "Thread.Sleep(5)", "Await something that happens, or a delay of the TimeProvider." },
        { @"\bConsole\.(Write|Error|Out)\b(?!,|\))", "Console.Out.WriteLine()", "Write to the stream that comes in; Program alone knows the console." },
        { @"\bas any\b|: any\b|<any>", "const view: any", "Name the type; unknown if it is not known." },
        { @"\b(class|record|struct|interface|enum) \w*(Manager|Helpers?|Util(s|ity)?|Common|Misc)\b", "class EventManager", "Name the thing after what it is or does." },
    };

    [Theory]
    [MemberData(nameof(Bans))]
    public void No_source_has(string pattern, string example, string instead)
    {
        Assert.Matches(pattern, example);
        var found = Sources.SelectMany(source => source.Text.Split('\n')
            .Select((line, index) => (line, place: $"{source.Path}:{index + 1}"))
            .Where(line => Regex.IsMatch(line.line, pattern))
            .Select(line => $"{line.place}: {line.line.Trim()}"));

        Assert.True(!found.Any(), $"{instead}\n{string.Join('\n', found)}");
    }

    [Fact]
    public void No_file_is_called_after_nothing_in_particular() => Assert.DoesNotContain(
        Sources, source => Regex.IsMatch(source.Path, @"(Manager|Helpers?|Util(s|ity)?|Common|Misc)\.\w+$", RegexOptions.IgnoreCase));

    [Fact]
    public void Past_300_lines_a_file_is_more_than_one_thing_and_is_split() =>
        Assert.DoesNotContain(Sources, source => source.Text.Count(character => character == '\n') > 300);

    [Fact]
    public void There_are_sources_to_look_at() => Assert.True(Sources.Count > 100);
}
