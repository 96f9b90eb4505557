using System.Text.RegularExpressions;

namespace Companion.Server.Tests.Running;

/// <summary><c>overlay/src/wire.ts</c> and the files beside it that are called so, where the pages say what they expect.</summary>
internal static class WireFile
{
    private static readonly string Text = string.Concat(
        Directory.GetFiles(Repository.In("overlay", "src"), "wire*.ts").Order().Select(File.ReadAllText));

    /// <summary>The members of an interface, those that it extends included.</summary>
    public static IReadOnlyList<string> MembersOf(string name)
    {
        var found = Regex.Match(Text, $@"^export interface {name}(?: extends (?<base>\w+))? \{{\n(?<body>.*?)^\}}", RegexOptions.Multiline | RegexOptions.Singleline);
        Assert.True(found.Success, $"wire.ts has no interface {name}.");
        var own = Regex.Matches(found.Groups["body"].Value, @"^  (?<name>\w+)\??:", RegexOptions.Multiline).Select(match => match.Groups["name"].Value);
        var inherited = found.Groups["base"].Success ? MembersOf(found.Groups["base"].Value) : [];
        return [.. inherited, .. own];
    }
}
