using Companion.Engine;
using Companion.Session.Views;

namespace Companion.Session.Tests.Watch;

/// <summary>Warnings as a presenter reads them.</summary>
internal static class Notes
{
    /// <summary>The texts of the warnings of a kind, most urgent first.</summary>
    public static string[] Texts(this PlayedSession session, WatchKind kind) =>
        [.. session.Warnings().Where(note => note.Kind == kind).Select(note => note.Text)];

    /// <summary>The one warning of a kind.</summary>
    public static WatchNote Note(this PlayedSession session, WatchKind kind) =>
        Assert.Single(session.Warnings(), note => note.Kind == kind);

    /// <summary>All warnings, after a scan and a look ahead.</summary>
    public static IReadOnlyList<WatchNote> Warnings(this PlayedSession session) =>
        Session.Watch.Warnings.Of(session.State, session.Scan(), session.LookAhead(), ShippedVoice.Voice);

    /// <summary>The cells of a warning by name.</summary>
    public static string Cells(this WatchNote note) => string.Join(' ', note.Cells);

    /// <summary>Fills in every digit of a picture that the grid does not hold yet, in reading order.</summary>
    /// <param name="session">The session.</param>
    /// <param name="picture">Nine lines of nine characters.</param>
    public static PlayedSession Fill(this PlayedSession session, string picture)
    {
        var text = picture.ReplaceLineEndings("");
        foreach (var cell in CellSet.All - session.State.Grid.Filled)
        {
            if (text[cell.Index] != '.')
                session.Place(cell.ToString(), text[cell.Index] - '0');
        }

        return session;
    }
}
