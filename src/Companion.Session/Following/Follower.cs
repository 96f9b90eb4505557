using System.Collections.Immutable;
using Companion.Engine;
using Companion.Session.Commands;
using Companion.Session.State;

namespace Companion.Session.Following;

/// <summary>
/// Follows the grid on the presenter's screen: says what to enter for what has changed there since the last look. Only changes are
/// entered: what is written by hand in the panel stays until the screen changes in that cell, and is told as apart meanwhile. A cell
/// counts when two looks one after the other agree on it. Immutable and pure.
/// </summary>
public sealed record Follower
{
    /// <summary>How long a list that the screen shows stays as it is before it counts as finished.</summary>
    public static readonly TimeSpan Settled = TimeSpan.FromSeconds(2);

    /// <summary>For how long screen and session differ before that is told.</summary>
    public static readonly TimeSpan Noticed = TimeSpan.FromSeconds(3);

    // A look that agrees, as soon as another frame can have been taken.
    private static readonly TimeSpan Soon = TimeSpan.FromMilliseconds(50);

    // With more cells than this that nobody can read, something lies over the grid.
    private const int MostUnsure = 20;

    private ImmutableDictionary<Cell, CellContent> Taken { get; init; } = ImmutableDictionary<Cell, CellContent>.Empty;

    private ImmutableDictionary<Cell, Word> Words { get; init; } = ImmutableDictionary<Cell, Word>.Empty;

    private ImmutableDictionary<Cell, DateTimeOffset> ApartSince { get; init; } = ImmutableDictionary<Cell, DateTimeOffset>.Empty;

    private Screen? Before { get; init; }

    // When the last list was written by following the screen, while it is not finished.
    private DateTimeOffset? WritingSince { get; init; }

    /// <summary>Whether marks are followed, or digits alone; digits alone by default.</summary>
    public bool WithMarks { get; init; }

    /// <summary>What the presenter says stands in a cell as it was read last.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="content">What stands there; null to take what was read.</param>
    /// <returns>The same follower where nothing was read yet.</returns>
    public Follower Told(Cell cell, CellContent? content) =>
        Before is { } last ? this with { Words = Words.SetItem(cell, new(last[cell], content ?? last[cell].Content)) } : this;

    /// <summary>Looks at a frame.</summary>
    /// <param name="screen">What was read.</param>
    /// <param name="state">The session as it is when the commands are done.</param>
    /// <param name="now">The session's clock.</param>
    public FollowStep Look(Screen screen, SessionState state, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(screen);
        ArgumentNullException.ThrowIfNull(state);
        var meant = screen.Each(Meant);
        var before = Before?.Each(Meant);
        var steady = meant.Where((cell, seen) => before?[cell].Content == seen.Content);
        var next = this with { Before = screen };
        var puzzle = PuzzleSeen.Of(meant, state.Grid);
        if (puzzle == PuzzleSeen.Kind.Same)
            return next.Follow(meant, steady, state, now);
        if (steady != CellSet.All)
            return new(next, FollowStatus.Following, []) { Again = Soon };
        return next.Wait(puzzle, meant);
    }

    /// <summary>The entries that make the session what is on the screen wherever the two are apart.</summary>
    /// <param name="state">The session.</param>
    public ImmutableArray<Command> TakeScreen(SessionState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        var givens = state.Grid.Givens;
        return ScreenEntries.For(
            state.Grid, Taken.Where(pair => !givens.Contains(pair.Key)).ToDictionary(pair => pair.Key, pair => pair.Value), WithMarks);
    }

    private SeenCell Meant(Cell cell, SeenCell seen)
    {
        var said = IsSaid(cell, seen);
        var content = said ? Words[cell].Meant : seen.Content;
        if (WithMarks)
            return seen with { Content = content, IsSure = said || seen.IsSure };
        // Whatever the small digits are, they are no big one.
        var isMarked = content.Digit is null && !content.IsEmpty;
        return new(content.WithoutMarks(), seen.IsGiven, said || seen.IsSure || isMarked);
    }

    // What was said is learned, and may be what is read from then on. A cell that is surely empty holds no sign that was not read.
    private bool IsSaid(Cell cell, SeenCell seen) => Words.TryGetValue(cell, out var word)
        && (word.Meant == seen.Content || (word.Read.Content == seen.Content && (word.Read.IsSure || !seen.IsSure || !seen.Content.IsEmpty)));

    private FollowStep Wait(PuzzleSeen.Kind puzzle, Screen meant)
    {
        var unsure = meant.Where((_, seen) => !seen.IsSure);
        if (puzzle == PuzzleSeen.Kind.None || unsure.Count > MostUnsure)
            return new(this, FollowStatus.GridNotFound, []);
        if (!unsure.IsEmpty)
            return new(this, FollowStatus.Unsure, []) { Held = [.. unsure.Select(cell => new HeldCell(cell, meant[cell].Content, HeldReason.Unsure))] };
        return new(this with { Taken = Taken.Clear(), ApartSince = ApartSince.Clear() }, FollowStatus.OtherPuzzle, []) { OtherPuzzle = meant.Givens(_ => true) };
    }

    private FollowStep Follow(Screen meant, CellSet steady, SessionState state, DateTimeOffset now)
    {
        // A sign that is read as nothing at all is no empty cell, and a line that was not made out leaves its mark unlike itself.
        var changed = steady & meant.Where((cell, seen) =>
            !Taken.TryGetValue(cell, out var taken) || taken != seen.Content || (!seen.IsSure && (seen.Content.IsEmpty || seen.HasDoubtfulMark)));
        var held = Holding.Of(meant, changed, state.Grid, cell => IsSaid(cell, Before![cell]));
        if (held.Count(each => each.Reason == HeldReason.Unsure) > MostUnsure)
            return new(this, FollowStatus.GridNotFound, []);
        var taken = changed - CellSet.Of([.. held.Select(each => each.Cell)]);
        var commands = Commands(meant, taken, state);
        var after = Played(state, commands, now);
        var apart = Apart(meant, steady - CellSet.Of([.. held.Select(each => each.Cell)]), after.Grid, now);
        var writing = after.Writing.IsEmpty ? null : commands.IsEmpty ? WritingSince : now;
        if (commands.IsEmpty && writing is { } since && now - since >= Settled)
            (commands, writing) = ([new SettleMarks()], null);

        var next = this with
        {
            Taken = Taken.SetItems(taken.Select(cell => KeyValuePair.Create(cell, meant[cell].Content))),
            ApartSince = apart,
            WritingSince = writing,
        };
        return new(next, held.IsEmpty ? FollowStatus.Following : FollowStatus.Unsure, commands)
        {
            Held = held,
            Apart = CellSet.Of([.. apart.Where(pair => now - pair.Value >= Noticed).Select(pair => pair.Key)]),
            Again = steady == CellSet.All ? Later(apart.Values.Where(at => now - at < Noticed).Select(at => at + Noticed), writing + Settled, now) : Soon,
        };
    }

    // At first sight what is on the screen comes to what the session has: nothing is known to have been taken out.
    private ImmutableArray<Command> Commands(Screen meant, CellSet taken, SessionState state)
    {
        var isFirst = taken.Any(cell => !Taken.ContainsKey(cell));
        var wanted = new Dictionary<Cell, CellContent>();
        foreach (var cell in taken - state.Grid.Givens)
        {
            var here = CellContent.Of(state.Grid, cell);
            var content = meant[cell].Content;
            if (!Taken.ContainsKey(cell))
                content = Joined(here, content);
            if (WithMarks ? here != content : here.Digit != content.Digit)
                wanted[cell] = content;
        }

        if (wanted.Count == 0)
            return [];
        var back = isFirst ? null : TakenBack.For(state, wanted, WithMarks);
        // A program that begins anew does that at once, and nobody takes more than a few entries back between two looks.
        return back is not { Length: <= 3 } && IsCleared(state.Grid, wanted) ? [new ClearGrid()] : back ?? ScreenEntries.For(state.Grid, wanted, WithMarks);
    }

    private static bool IsCleared(Grid grid, Dictionary<Cell, CellContent> wanted) => wanted.Count > 1
        && grid.Written.All(cell => wanted.TryGetValue(cell, out var content) && content.IsEmpty) && wanted.Values.All(content => content.IsEmpty);

    private static CellContent Joined(CellContent here, CellContent seen)
    {
        if (seen.Digit is not null || here.Digit is not null)
            return seen.Digit is null ? here : seen;
        return new(null, here.BlockMarks | seen.BlockMarks, here.CellMark | seen.CellMark, here.Struck | seen.Struck);
    }

    private ImmutableDictionary<Cell, DateTimeOffset> Apart(Screen meant, CellSet looked, Grid grid, DateTimeOffset now) =>
        looked.Where(cell => CellContent.Of(grid, cell) is var here
                && (WithMarks ? here != meant[cell].Content : here.Digit != meant[cell].Content.Digit))
            .ToImmutableDictionary(cell => cell, cell => ApartSince.GetValueOrDefault(cell, now));

    private static SessionState Played(SessionState state, ImmutableArray<Command> commands, DateTimeOffset now) => commands.Aggregate(
        state, (before, command) => Decider.Decide(before, command, now).Events.Aggregate(before, Evolver.Evolve));

    private static TimeSpan? Later(IEnumerable<DateTimeOffset> noticed, DateTimeOffset? settled, DateTimeOffset now)
    {
        var next = noticed.Append(settled ?? DateTimeOffset.MaxValue).Min();
        return next == DateTimeOffset.MaxValue ? null : next > now ? next - now : Soon;
    }

    // What the presenter said of a reading, for as long as it stays that one.
    private readonly record struct Word(SeenCell Read, CellContent Meant);
}
