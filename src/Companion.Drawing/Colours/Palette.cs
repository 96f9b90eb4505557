using System.Text.Json;

namespace Companion.Drawing.Colours;

/// <summary>
/// The colours of the roles that shapes have, and of the boards of our own. <c>configs/palette.json</c> is its only source; the
/// pages read the same file. Keys that nothing here reads are theirs.
/// </summary>
public sealed record Palette
{
    private static readonly JsonSerializerOptions Reading = new(JsonSerializerDefaults.Web)
    {
        RespectRequiredConstructorParameters = true,
    };

    /// <summary>The palette as it ships.</summary>
    public static Palette Standard { get; } = ReadStandard();

    /// <summary>A house to look at.</summary>
    public required Colour LookAt { get; init; }

    /// <summary>A pattern cell of the first role.</summary>
    public required Colour FirstRole { get; init; }

    /// <summary>A pattern cell of the second role.</summary>
    public required Colour SecondRole { get; init; }

    /// <summary>A link.</summary>
    public required Colour Link { get; init; }

    /// <summary>A candidate that goes.</summary>
    public required Colour Goes { get; init; }

    /// <summary>A digit that follows.</summary>
    public required Colour Follows { get; init; }

    /// <summary>A cell that viewers call.</summary>
    public required Colour Called { get; init; }

    /// <summary>The dark edge of every shape, and dark text on plates.</summary>
    public required Colour DarkEdge { get; init; }

    /// <summary>The light edge of every shape, and light text on plates.</summary>
    public required Colour LightEdge { get; init; }

    /// <summary>The boards of our own, light and dark.</summary>
    public required BoardThemes Board { get; init; }

    /// <summary>The edge colour that stands out more from this one, for text upon it.</summary>
    /// <param name="plate">The colour behind the text.</param>
    public Colour InkOn(Colour plate) => plate.ContrastTo(DarkEdge) >= plate.ContrastTo(LightEdge) ? DarkEdge : LightEdge;

    /// <summary>Reads a palette file.</summary>
    /// <param name="json">The text of the file.</param>
    /// <exception cref="FormatException">The text is not JSON, a key is missing or a colour is malformed.</exception>
    public static Palette Read(string json)
    {
        try
        {
            return JsonSerializer.Deserialize<Palette>(json, Reading) ?? throw new FormatException("The palette is empty.");
        }
        catch (JsonException fault)
        {
            throw new FormatException($"The palette cannot be used: {fault.Message}", fault);
        }
    }

    private static Palette ReadStandard()
    {
        using var reader = new StreamReader(Resource.Open("palette.json"));
        return Read(reader.ReadToEnd());
    }
}
