using System.Globalization;

namespace Companion.Sight.Training;

/// <summary>Reads words of a command that are followed by a number each.</summary>
internal static class NumberedWords
{
    /// <summary>Goes through them.</summary>
    /// <param name="words">The words.</param>
    /// <param name="options">What holds where nothing is said.</param>
    /// <param name="said">What a word and its number make of the options so far.</param>
    /// <exception cref="ArgumentException">A word has no number from 1 after it.</exception>
    public static T Fold<T>(IReadOnlyList<string> words, T options, Func<T, string, int, T> said)
    {
        for (var index = 0; index < words.Count; index += 2)
        {
            if (index + 1 == words.Count || !int.TryParse(words[index + 1], CultureInfo.InvariantCulture, out var number) || number < 1)
                throw new ArgumentException($"A number from 1 has to follow {words[index]}.");
            options = said(options, words[index], number);
        }

        return options;
    }
}
