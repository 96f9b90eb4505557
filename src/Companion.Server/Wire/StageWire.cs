using System.Collections.Immutable;
using Companion.Drawing.Pictures;
using Companion.Engine.Proofs;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Server.Wire;

/// <summary>What the stage is sent. It is read by everybody who sees the broadcast.</summary>
/// <param name="Sequence">Number of the state it shows.</param>
/// <param name="Credit">Title, setter and link.</param>
/// <param name="Cells">The 81 cells as the presenter wrote them.</param>
/// <param name="Grade">The grade on air, or null.</param>
/// <param name="Picture">The picture of that grade, or of the cells that viewers call, or null.</param>
/// <param name="Code">The code by which viewers let the delay be measured, or null.</param>
public sealed record StageWire(
    long Sequence, Credit Credit, ImmutableArray<StageCell> Cells, Grade? Grade, Picture? Picture, string? Code)
{
    internal static StageWire Of(SessionState state, Voice voice)
    {
        var view = PublicViews.Stage(state, voice);
        return new(
            view.Sequence,
            view.Credit,
            view.Cells,
            view.OnAir?.Grade,
            view.OnAir is { } hint ? PictureOf.Hint(hint) : CalledWire.PictureOfThem(view.Called, voice),
            view.Code);
    }
}
