using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Companion.Server.Wire;

/// <summary>
/// The one shape in which everything leaves the server: names in camel case, cells as <c>r4c7</c>, digits as numbers, sets as
/// arrays, null as null. <c>overlay/src/wire.ts</c> says the same to the pages.
/// </summary>
internal static class WireJson
{
    /// <summary>The options.</summary>
    public static JsonSerializerOptions Options { get; } = Make();

    /// <summary>Puts the shape into options that somebody else has made.</summary>
    /// <param name="options">The options.</param>
    public static void Shape(JsonSerializerOptions options)
    {
        options.PropertyNamingPolicy = JsonNamingPolicy.CamelCase;
        options.Converters.Add(new CellConverter());
        options.Converters.Add(new DigitConverter());
        options.Converters.Add(new RuleIdConverter());
        options.Converters.Add(new SetConverter<Engine.DigitSet, Engine.Digit>());
        options.Converters.Add(new SetConverter<Engine.CandidateSet, Engine.Candidate>());
        options.Converters.Add(new GradeConverter());
        options.Converters.Add(new JsonStringEnumConverter(JsonNamingPolicy.CamelCase));
    }

    private static JsonSerializerOptions Make()
    {
        // Read by scripts and by people, never put into a page's source: no need to escape a quotation mark.
        var options = new JsonSerializerOptions { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
        Shape(options);
        options.MakeReadOnly(populateMissingResolver: true);
        return options;
    }
}
