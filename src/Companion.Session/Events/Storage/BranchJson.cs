using System.Text.Json.Nodes;
using Companion.Engine;
using Companion.Engine.Proofs;

namespace Companion.Session.Events.Storage;

/// <summary>What follows from what is supposed, as JSON and back.</summary>
internal static class BranchJson
{
    public static JsonNode Write(Branch branch)
    {
        var end = new JsonObject { ["digits"] = branch.End.Digits.ToString() };
        if (branch.End.Cell is { } cell)
            end["cell"] = cell.ToString();
        if (branch.End.House is { } house)
            end["house"] = house.ToString();
        return new JsonObject
        {
            ["supposed"] = branch.Supposed.ToString(),
            ["steps"] = new JsonArray([.. branch.Steps.Select(DeductionJson.Write)]),
            ["end"] = end,
        };
    }

    public static Branch Read(JsonObject body)
    {
        var end = body["end"]!.AsObject();
        return new(
            Candidate.Parse(body.Text("supposed")),
            [.. body.Array("steps").Select(step => DeductionJson.Read(step!.AsObject()))],
            new(
                end["cell"] is { } cell ? Cell.Parse(cell.GetValue<string>()) : null,
                end["house"] is { } house ? House.Parse(house.GetValue<string>()) : null,
                DigitSet.Parse(end.Text("digits"))));
    }
}
