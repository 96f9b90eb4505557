using System.Collections.Immutable;
using Companion.Drawing.Pictures;
using Companion.Session.Views;

namespace Companion.Drawing.Stills.Sheets;

/// <summary>One board of a contact sheet.</summary>
/// <param name="Time">When it was, as it is written.</param>
/// <param name="Title">What it shows.</param>
/// <param name="Cells">The 81 cells, row by row.</param>
/// <param name="Picture">What was on air; null for nothing.</param>
public sealed record SheetMoment(string Time, string Title, ImmutableArray<StageCell> Cells, Picture? Picture);
