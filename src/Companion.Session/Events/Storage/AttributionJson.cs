using System.Text.Json.Nodes;
using Companion.Engine.Proofs;

namespace Companion.Session.Events.Storage;

/// <summary>An attribution as fields of a body and back.</summary>
internal static class AttributionJson
{
    public static void Write(Attribution attribution, JsonObject body)
    {
        switch (attribution)
        {
            case Attribution.Proved proved:
                body["steps"] = new JsonArray([.. proved.Steps.Select(DeductionJson.Write)]);
                body["hardest"] = proved.Hardest.Value;
                body["cost"] = proved.Cost;
                if (proved.AtOnce is { } atOnce)
                    body["atOnce"] = DeductionJson.Write(atOnce);
                break;
            case Attribution.NotProved notProved:
                body["notProvedUpTo"] = notProved.UpTo.Value;
                break;
        }
    }

    public static Attribution Read(JsonObject body) => body.TextOrNull("notProvedUpTo") is { } upTo
        ? new Attribution.NotProved(new(upTo))
        : new Attribution.Proved(
            [.. body.Array("steps").Select(step => DeductionJson.Read(step!.AsObject()))],
            new(body.Text("hardest")),
            body.Number("cost"),
            body["atOnce"] is JsonObject atOnce ? DeductionJson.Read(atOnce) : null);
}
