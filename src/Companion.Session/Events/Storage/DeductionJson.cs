using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Companion.Engine;
using Companion.Engine.Proofs;

namespace Companion.Session.Events.Storage;

/// <summary>A whole deduction as JSON and back, so that a log can be read when the rules that found it have changed.</summary>
internal static class DeductionJson
{
    // Both ways of the names of roles. What stands here is never edited, whatever the roles are called in the code.
    private static readonly ImmutableDictionary<Role, string> RoleNames = new Dictionary<Role, string>
    {
        [Role.Single] = "single",
        [Role.Locked] = "locked",
        [Role.Subset] = "subset",
        [Role.Base] = "base",
        [Role.Pivot] = "pivot",
        [Role.Pincer] = "pincer",
        [Role.Fin] = "fin",
        [Role.Cross] = "cross",
        [Role.End] = "end",
        [Role.Between] = "between",
        [Role.FirstColour] = "first-colour",
        [Role.SecondColour] = "second-colour",
    }.ToImmutableDictionary();

    private static readonly ImmutableDictionary<string, Role> Roles =
        RoleNames.ToImmutableDictionary(pair => pair.Value, pair => pair.Key);

    public static JsonObject Write(Deduction deduction) => new()
    {
        ["rule"] = deduction.Rule.Value,
        ["cells"] = new JsonArray([.. deduction.Cells.Select(Write)]),
        ["houses"] = deduction.Houses.ToString(),
        ["digits"] = deduction.Digits.ToString(),
        ["links"] = new JsonArray([.. deduction.Links.Select(Write)]),
        ["restsOn"] = deduction.RestsOn.ToString(),
        ["places"] = deduction.Places.ToString(),
        ["removes"] = deduction.Removes.ToString(),
    };

    public static Deduction Read(JsonObject body) => new()
    {
        Rule = new(body.Text("rule")),
        Cells = [.. body.Array("cells").Select(cell => ReadCell(cell!.AsObject()))],
        Houses = HouseSet.Parse(body.Text("houses")),
        Digits = DigitSet.Parse(body.Text("digits")),
        Links = [.. body.Array("links").Select(link => ReadLink(link!.AsObject()))],
        RestsOn = CandidateSet.Parse(body.Text("restsOn")),
        Places = CandidateSet.Parse(body.Text("places")),
        Removes = CandidateSet.Parse(body.Text("removes")),
    };

    private static JsonNode Write(PatternCell cell) =>
        new JsonObject { ["cell"] = cell.Cell.ToString(), ["role"] = RoleNames[cell.Role] };

    private static JsonNode Write(Link link) =>
        new JsonObject { ["from"] = link.From.ToString(), ["to"] = link.To.ToString(), ["strong"] = link.IsStrong };

    private static PatternCell ReadCell(JsonObject body) => Roles.TryGetValue(body.Text("role"), out var role)
        ? new(Cell.Parse(body.Text("cell")), role)
        : throw new FormatException($"'{body.Text("role")}' is no role.");

    private static Link ReadLink(JsonObject body) =>
        new(Candidate.Parse(body.Text("from")), Candidate.Parse(body.Text("to")), body.Flag("strong"));
}
