using System.Globalization;
using System.Text.Json.Nodes;
using Companion.Engine;
using Companion.Engine.Proofs;

namespace Companion.Session.Events.Storage;

/// <summary>
/// Reads the fields of a body. What is missing or of another type is a <see cref="FormatException"/> that names the field.
/// </summary>
internal static class JsonFields
{
    /// <summary>Cells as their names with one space between.</summary>
    public static string Names(CellSet cells) => string.Join(' ', cells);

    public static string Text(this JsonObject body, string name) => body.Field(name).GetValue<string>();

    public static string? TextOrNull(this JsonObject body, string name) => body[name]?.GetValue<string>();

    public static bool Flag(this JsonObject body, string name) => body.Field(name).GetValue<bool>();

    public static int Count(this JsonObject body, string name) => body.Field(name).GetValue<int>();

    public static double Number(this JsonObject body, string name) => body.Field(name).GetValue<double>();

    public static JsonObject Object(this JsonObject body, string name) => body.Field(name).AsObject();

    public static JsonArray Array(this JsonObject body, string name) => body.Field(name).AsArray();

    public static DateTimeOffset Time(this JsonObject body, string name) =>
        DateTimeOffset.Parse(body.Text(name), CultureInfo.InvariantCulture, DateTimeStyles.RoundtripKind);

    public static Digit Digit(this JsonObject body, string name) => Engine.Digit.Of(body.Field(name).GetValue<int>());

    public static CellSet Cells(this JsonObject body, string name) =>
        CellSet.Of([.. body.Text(name).Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Cell.Parse)]);

    public static Grade Grade(this JsonObject body, string name) => body.Field(name).GetValue<int>() switch
    {
        1 => Engine.Proofs.Grade.Where,
        2 => Engine.Proofs.Grade.What,
        3 => Engine.Proofs.Grade.Which,
        4 => Engine.Proofs.Grade.Why,
        var other => throw new FormatException($"{other} is no grade."),
    };

    private static JsonNode Field(this JsonObject body, string name) =>
        body[name] ?? throw new FormatException($"the field '{name}' is missing");
}
