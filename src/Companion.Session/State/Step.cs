using Companion.Engine;
using Companion.Session.Events;

namespace Companion.Session.State;

/// <summary>One entry that can be undone, or made again, with the grid on its other side.</summary>
/// <param name="Number">Number of the entry in the session, 1-based; an undo and a redo have numbers of their own.</param>
/// <param name="Entry">The event by which it was made; it carries the time.</param>
/// <param name="Label">The entry in a few words, such as <c>5 in r4c7</c>.</param>
/// <param name="Grid">The grid before it or, once undone, the grid after it.</param>
/// <param name="Writing">The cells whose lists were being written then.</param>
public sealed record Step(int Number, Event Entry, string Label, Grid Grid, CellSet Writing);
