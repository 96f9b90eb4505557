using System.Collections.Immutable;
using Companion.Drawing.Pictures;
using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Server.Wire;
using Companion.Session.Boards;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Server.CommandLine;

/// <summary>What a still is drawn of: a stage, the deductions that are open on its board, and what is on air there.</summary>
internal sealed record StillScene(StageView? View, Board? Board, Ladder Ladder, Picture? OnAir, ImmutableArray<string> Faults)
{
    private Scenes Scenes { get; init; } = Scenes.Initial;

    /// <summary>The scene of a position.</summary>
    /// <param name="text">The position, in any layout that <see cref="BoardText.Read"/> takes.</param>
    /// <param name="ladder">The rules to look with.</param>
    public static StillScene OfGrid(string text, Ladder ladder)
    {
        var reading = Board.Read(BoardText.Read(text));
        if (reading.Value is not { } board)
            return new(null, null, ladder, null, [.. reading.Faults.Select(fault => fault.Sentence)]);
        return new(new(0, new("", "", ""), StageCells.Of(board), null, null), board, LadderOptions.For(board, ladder), null, []);
    }

    /// <summary>The scene of the session that a data folder holds.</summary>
    /// <param name="data">The folder, or null for the usual one.</param>
    /// <param name="ladder">The whole ladder; what the session cut from it is left out.</param>
    /// <param name="wording">The words.</param>
    /// <exception cref="PlainException">There is no session.</exception>
    public static StillScene OfSession(string? data, Ladder ladder, Wording wording)
    {
        return OfState(StoredSession.Read(data, "give a grid"), ladder, wording);
    }

    /// <summary>The scene of a session as it stood at one moment.</summary>
    /// <param name="state">The state.</param>
    /// <param name="ladder">The whole ladder; what the session cut from it is left out.</param>
    /// <param name="wording">The words.</param>
    public static StillScene OfState(SessionState state, Ladder ladder, Wording wording)
    {
        var voice = new Voice(wording);
        var view = PublicViews.Stage(state, voice);
        var known = KnownBoard.Of(state);
        return new(view, known.Value, state.LadderCut.Of(ladder, state.Grid.Puzzle is not null), PictureOnAir(), [])
        {
            Scenes = state.Scenes,
        };

        Picture? PictureOnAir() => view.OnAir is { } hint ? Drawing.Pictures.PictureOf.Hint(hint) : CalledWire.PictureOfThem(view.Called, voice);
    }

    /// <summary>Says why there is nothing to draw.</summary>
    /// <param name="error">Where to.</param>
    /// <returns>What the command leaves behind then.</returns>
    public int Refuse(TextWriter error)
    {
        foreach (var fault in Faults)
            error.WriteLine(fault);
        return ExitCode.BadPuzzle;
    }

    /// <summary>The board's place in a scene of the broadcast.</summary>
    /// <param name="name">The scene's name.</param>
    /// <exception cref="PlainException">There is no such scene.</exception>
    public Frame FrameOf(string name) => Scenes[name]
        ?? throw new PlainException($"There is no scene '{name}': name one of {string.Join(", ", Scenes.Select(scene => scene.Key))} with --scene.");

    /// <summary>The picture of one of the open deductions.</summary>
    /// <param name="number">Its number in the scan, from 1 on.</param>
    /// <param name="grade">How much of it.</param>
    /// <param name="wording">The words.</param>
    /// <param name="cancel">Stops looking for them.</param>
    /// <exception cref="PlainException">There are not as many.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public Picture PictureOf(int number, Grade grade, Wording wording, CancellationToken cancel)
    {
        var open = Board is null ? [] : Ladder.Scan(Board, cancel);
        return number <= open.Count
            ? Drawing.Pictures.PictureOf.Hint(wording.HintsFor(Board!, open[number - 1])[grade])
            : throw new PlainException($"{open.Count} deductions are open and there is no number {number}: 'companion scan' lists them.");
    }
}
