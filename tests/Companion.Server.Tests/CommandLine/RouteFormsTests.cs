using System.Text.Json;
using System.Xml.Linq;
using Companion.Server.Tests.Paper;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.CommandLine;

/// <summary>The forms in which a run sheet is given out, and what goes with each.</summary>
public sealed class RouteFormsTests : IDisposable
{
    // The demo, of our own generator.
    private const string Demo = "45...9....8..5.4.31....48..6..9......7..1..9......2..8..61....25.2.9..4....4...35";

    private static readonly string[] Route = ["route", Demo, "--feature", "xy-wing", "--stop-at", "grouped-chain"];

    private readonly TemporaryFolder _folder = new();

    [Fact]
    public async Task With_json_or_html_the_PDF_file_is_written_too_and_said_beside_the_output()
    {
        foreach (var form in new[] { "--json", "--html" })
        {
            var file = _folder.In(form + ".pdf");
            var alone = await Cli.Run([.. Route, form]);
            var (code, output, error) = await Cli.Run([.. Route, form, "--pdf", file]);

            Assert.Equal((0, alone.Output, $"Written to {file}.\n"), (code, output, error));
            Assert.Contains("The grid is full after step ", Poppler.Text(file), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("--json and --html both write what the command gives out: ask for one of them, with --pdf if you like.", "--json", "--html")]
    [InlineData("--paper, --title and --author are for what is printed: add --pdf or --html.", "--title", "Evening")]
    [InlineData("--paper, --title and --author are for what is printed: add --pdf or --html.", "--json", "--paper", "a4")]
    public async Task What_does_not_go_together_is_refused_in_one_sentence(string sentence, params string[] options)
    {
        Assert.Equal((2, "", sentence + "\n"), await Cli.Run([.. Route, .. options]));
    }

    [Fact]
    public async Task Early_without_a_featured_rule_is_refused()
    {
        Assert.Equal((2, "", "--early is about featured rules: name one with --feature.\n"), await Cli.Run("route", Demo, "--early"));
    }

    [Fact]
    public async Task Notes_stand_in_every_form()
    {
        const string Note = "Greet the harbour first.";
        await using (var companion = await RunningCompanion.Start(_folder.Path))
        {
            await using var presenter = await companion.OpenDesk();
            await presenter.Do("LoadPuzzle", Demo, "", "", "");
            await presenter.Do("NoteStep", "r3c2=6", "", Note);
        }

        string[] noted = [.. Route, "--notes", "--data", _folder.Path];
        var (_, text, _) = await Cli.Run(noted);
        var (_, json, _) = await Cli.Run([.. noted, "--json"]);
        var (_, html, _) = await Cli.Run([.. noted, "--html"]);
        using var sheet = JsonDocument.Parse(json);
        var notes = sheet.RootElement.GetProperty("notes").EnumerateArray().Select(note => note.GetString()).ToList();

        // Step 1 of the route: a hidden single.
        Assert.Contains($"\n           1  Hidden single: 6 in block 1 → r3c2 is 6\n              Note: {Note}\n", text, StringComparison.Ordinal);
        Assert.Equal(sheet.RootElement.GetProperty("steps").GetArrayLength(), notes.Count);
        Assert.Equal([Note, ""], notes.Distinct());
        Assert.Contains(Note, XDocument.Parse(html).Root!.Value, StringComparison.Ordinal);
        Assert.DoesNotContain("\"notes\"", (await Cli.Run([.. Route, "--json"])).Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Talking_points_name_the_facts_that_they_rest_on()
    {
        var (_, output, _) = await Cli.Run([.. Route, "--json"]);
        using var sheet = JsonDocument.Parse(output);
        var points = sheet.RootElement.GetProperty("talkingPoints").EnumerateArray().ToList();

        Assert.All(points, point => Assert.Equal(["step", "oneIn", "text", "facts"], point.EnumerateObject().Select(member => member.Name)));
        Assert.All(points, point => Assert.Equal(
            ["kind", "cells", "digits", "houses", "rule", "count", "outOf"], point.GetProperty("facts").EnumerateObject().Select(member => member.Name)));
        // Each cell, digit and house that is said is among the facts.
        Assert.All(points, point => Assert.All(Named(point.GetProperty("text").GetString()!), word => Assert.Contains(word, FactWords(point.GetProperty("facts")))));
        Assert.Equal("needs", Fact(points, "comes to an XY-wing").GetProperty("kind").GetString());
        Assert.Equal("xy-wing", Fact(points, "comes to an XY-wing").GetProperty("rule").GetString());
        var bivalue = Fact(points, "bivalue cells");
        Assert.Equal(bivalue.GetProperty("count").GetInt32(), bivalue.GetProperty("cells").GetArrayLength());
    }

    [Fact]
    public async Task What_else_of_a_featured_rule_is_open_is_told_with_what_it_takes_out()
    {
        var (_, text, _) = await Cli.Run([.. Route, "--feature", "x-wing"]);
        var also = text.Split('\n').Where(line => line.Contains("also open", StringComparison.Ordinal)).ToList();

        Assert.NotEmpty(also);
        Assert.All(also.SelectMany(line => line[line.IndexOf("also open: ", StringComparison.Ordinal)..].TrimEnd('.')["also open: ".Length..].Split("; ")), other =>
            Assert.Matches("^(r[1-9]c[1-9] )*r[1-9]c[1-9], which takes out [1-9]( and [1-9])*, before steps? [0-9]+( to [0-9]+)?$", other));
    }

    public void Dispose() => _folder.Dispose();

    private static JsonElement Fact(List<JsonElement> points, string words) =>
        points.First(point => point.GetProperty("text").GetString()!.Contains(words, StringComparison.Ordinal)).GetProperty("facts");

    private static IEnumerable<string> Named(string text) => System.Text.RegularExpressions.Regex.Matches(text, "r[1-9]c[1-9]|[Bb]lock [1-9]")
        .Select(match => match.Value.ToLowerInvariant());

    private static List<string> FactWords(JsonElement facts) =>
        [.. facts.GetProperty("cells").EnumerateArray().Concat(facts.GetProperty("houses").EnumerateArray()).Select(word => word.GetString()!)];
}
