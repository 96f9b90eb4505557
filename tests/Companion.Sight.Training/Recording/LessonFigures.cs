using Companion.Engine;
using Companion.Sight.Samples;

namespace Companion.Sight.Training.Recording;

/// <summary>How far a lesson reaches: on screens in one face each, one glyph of each digit is taught as some other digit.</summary>
/// <param name="Taken">The part of the later glyphs of that digit that are read as taught.</param>
/// <param name="Spilt">The part of the glyphs of the other digits that are read as taught, and would not be without the lesson.</param>
internal sealed record LessonFigures(double Taken, double Spilt)
{
    /// <summary>Measures it.</summary>
    public static LessonFigures Of(GlyphReader reader, int seed, int screens, IReadOnlyList<FontFamily> families, SampleRange range)
    {
        const int Times = 4;
        var (taken, same, spilt, others) = (0, 0, 0, 0);
        for (var screen = 0; screen < screens; screen++)
        {
            var glyphs = Screen.Draw(new Random(unchecked(seed * (int)0x9E3779B1 ^ screen * (int)0x85EBCA6B)), families, range, Times);
            GlyphImage[] later = [.. glyphs.Skip(9).Select(glyph => glyph.Image)];
            var before = reader.Read(later);
            for (var kind = 0; kind < 9; kind++)
            {
                var taught = Digit.Of(1 + (kind + 1 + screen % 8) % 9);
                var after = reader.Read(later, Lessons.None.Add(glyphs[kind].Image, taught));
                for (var index = 0; index < later.Length; index++)
                {
                    var isTaken = after[index].Digit == taught && before[index].Digit != taught;
                    if (index % 9 == kind)
                        (taken, same) = (taken + (isTaken ? 1 : 0), same + 1);
                    else
                        (spilt, others) = (spilt + (isTaken ? 1 : 0), others + 1);
                }
            }
        }

        return new((double)taken / same, (double)spilt / others);
    }
}
