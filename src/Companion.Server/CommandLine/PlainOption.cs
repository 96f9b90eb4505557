using System.CommandLine;
using System.CommandLine.Parsing;

namespace Companion.Server.CommandLine;

/// <summary>Options whose bad values are refused in words of ours.</summary>
internal static class PlainOption
{
    /// <summary>An option whose value is read by a function.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="description">What it is for.</param>
    /// <param name="read">Reads the value; null where it is none.</param>
    /// <param name="expected">What a good value is, as in "a number from 1 to 4".</param>
    /// <typeparam name="T">What the value becomes.</typeparam>
    public static Option<T> Of<T>(string name, string description, Func<string, T?> read, string expected)
        where T : class => new(name)
        {
            Description = description,
            CustomParser = result => Read(name, result, read, expected),
        };

    /// <summary>An option whose value is a whole number.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="description">What it is for.</param>
    /// <param name="least">The least number.</param>
    /// <param name="most">The greatest number.</param>
    public static Option<int?> Number(string name, string description, int least, int most) => new(name)
    {
        Description = description,
        CustomParser = result =>
        {
            if (int.TryParse(result.Tokens[0].Value, out var number) && number >= least && number <= most)
                return number;
            result.AddError($"{name} takes a number from {least} to {most} and not '{result.Tokens[0].Value}'.");
            return null;
        },
    };

    private static T? Read<T>(string name, ArgumentResult result, Func<string, T?> read, string expected)
        where T : class
    {
        var text = result.Tokens[0].Value;
        var value = read(text);
        if (value is null)
            result.AddError($"{name} takes {expected} and not '{text}'.");
        return value;
    }
}
