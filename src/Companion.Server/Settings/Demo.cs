using System.Text.Json;
using Companion.Engine.Planning;
using Companion.Session.Commands;

namespace Companion.Server.Settings;

/// <summary>The puzzle that the first session of all begins with, so that every page has something to show.</summary>
internal sealed record Demo(string? Title, string? Setter, string? Link, string? Grid, string? Featured)
{
    /// <summary>Reads the puzzle that ships.</summary>
    /// <exception cref="PlainException">The file is missing or was broken by a change.</exception>
    public static LoadPuzzle Load()
    {
        var path = ShippedFiles.Demo;
        try
        {
            var demo = JsonSerializer.Deserialize<Demo>(File.ReadAllBytes(path), JsonSerializerOptions.Web)!;
            return new(demo.Grid ?? "", demo.Title ?? "", demo.Setter ?? "", demo.Link ?? "")
            {
                Featured = demo.Featured is { } rule ? new([new Feature(new(rule))]) : default,
            };
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or JsonException)
        {
            throw new PlainException($"The demo in {path} cannot be used: {fault.Message}", fault);
        }
    }
}
