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
        [Role.ChainEnd] = "chain-end",
        [Role.Chain] = "chain",
        [Role.Set] = "set",
        [Role.Start] = "start",
        [Role.Floor] = "floor",
        [Role.Roof] = "roof",
    }.ToImmutableDictionary();

    private static readonly ImmutableDictionary<string, Role> Roles =
        RoleNames.ToImmutableDictionary(pair => pair.Value, pair => pair.Key);

    // Sets, groups, branches and the assumption of one solution are written only where there are any, so that what was written
    // before they came in reads the same.
    public static JsonObject Write(Deduction deduction)
    {
        var body = new JsonObject
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
        if (!deduction.Sets.IsEmpty)
            body["sets"] = new JsonArray([.. deduction.Sets.Select(set => JsonValue.Create(Text(set)))]);
        if (!deduction.Branches.IsEmpty)
            body["branches"] = new JsonArray([.. deduction.Branches.Select(BranchJson.Write)]);
        if (deduction.AssumesOneSolution)
            body["assumesOneSolution"] = true;
        return body;
    }

    public static Deduction Read(JsonObject body) => new()
    {
        Rule = new(body.Text("rule")),
        Cells = [.. body.Array("cells").Select(cell => ReadCell(cell!.AsObject()))],
        Houses = HouseSet.Parse(body.Text("houses")),
        Digits = DigitSet.Parse(body.Text("digits")),
        Links = [.. body.Array("links").Select(link => ReadLink(link!.AsObject()))],
        Sets = body["sets"] is JsonArray sets ? [.. sets.Select(set => ReadCells(set!.GetValue<string>()))] : [],
        Branches = body["branches"] is JsonArray branches ? [.. branches.Select(branch => BranchJson.Read(branch!.AsObject()))] : [],
        RestsOn = CandidateSet.Parse(body.Text("restsOn")),
        Places = CandidateSet.Parse(body.Text("places")),
        Removes = CandidateSet.Parse(body.Text("removes")),
        AssumesOneSolution = body["assumesOneSolution"]?.GetValue<bool>() ?? false,
    };

    private static JsonNode Write(PatternCell cell) =>
        new JsonObject { ["cell"] = cell.Cell.ToString(), ["role"] = RoleNames[cell.Role] };

    private static JsonNode Write(Link link)
    {
        var body = new JsonObject { ["from"] = link.From.ToString(), ["to"] = link.To.ToString(), ["strong"] = link.IsStrong };
        if (!link.FromGroup.IsEmpty)
            body["fromGroup"] = Text(link.FromGroup);
        if (!link.ToGroup.IsEmpty)
            body["toGroup"] = Text(link.ToGroup);
        return body;
    }

    private static string Text(CellSet cells) => string.Join(' ', cells);

    private static CellSet ReadCells(string text) => CellSet.Of([.. text.Split(' ').Select(Cell.Parse)]);

    private static CellSet ReadGroup(JsonObject body, string name) =>
        body[name] is { } cells ? ReadCells(cells.GetValue<string>()) : CellSet.Empty;

    private static PatternCell ReadCell(JsonObject body) => Roles.TryGetValue(body.Text("role"), out var role)
        ? new(Cell.Parse(body.Text("cell")), role)
        : throw new FormatException($"'{body.Text("role")}' is no role.");

    private static Link ReadLink(JsonObject body) =>
        new(Candidate.Parse(body.Text("from")), Candidate.Parse(body.Text("to")), body.Flag("strong"))
        {
            FromGroup = ReadGroup(body, "fromGroup"),
            ToGroup = ReadGroup(body, "toGroup"),
        };
}
