using Companion.Drawing.Pictures;
using Companion.Engine.Proofs;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Server.Wire;

/// <summary>A deduction that stands by or is on air, as the presenter sees it.</summary>
/// <param name="Deduction">The deduction.</param>
/// <param name="Grade">The grade that is on air, or, standing by, the one that comes next.</param>
/// <param name="Hints">The words of the four grades.</param>
/// <param name="Picture">The whole deduction, for the preview on the presenter's own board.</param>
public sealed record CueWire(OpenDeduction Deduction, Grade Grade, HintTexts Hints, Picture Picture)
{
    internal static CueWire? Of(CueView? view, Chosen? chosen, Voice voice) => view is null || chosen is null
        ? null
        : new(view.Deduction, view.Grade, view.Hints, PictureOf.Hint(voice.Wording.HintsFor(chosen.Board, chosen.Deduction).Why));
}
