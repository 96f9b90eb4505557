using System.Collections.Immutable;
using Companion.Engine;

namespace Companion.Session.Views;

/// <summary>One private warning. It never gives the answer away.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Text">One plain sentence with the way out.</param>
/// <param name="Cells">The cells to look at; none where they would tell too much.</param>
/// <param name="Since">When it began, or null where that says nothing.</param>
/// <param name="Entries">How many entries ago it began, 0 for the last one.</param>
public sealed record WatchNote(WatchKind Kind, string Text, ImmutableArray<Cell> Cells, DateTimeOffset? Since, int Entries);
