using Companion.Server.Wire;
using Companion.Session.Views;

namespace Companion.Server.Live.Desk;

/// <summary>What a panel can be told. Each is a whole view; a lost one is healed by the next.</summary>
public interface IDeskClient
{
    /// <summary>Board, warnings and what is on air; after each entry and again after its scan.</summary>
    /// <param name="view">The view.</param>
    Task Desk(DeskWire view);

    /// <summary>The open deductions; after each scan.</summary>
    /// <param name="view">The view.</param>
    Task Next(NextView view);

    /// <summary>When the featured rules come; after each look ahead.</summary>
    /// <param name="view">The view.</param>
    Task Forecast(ForecastView view);

    /// <summary>The cue list; after each change of it, and after each entry by which a deduction on it may have been passed.</summary>
    /// <param name="view">The view.</param>
    Task Cues(CuesView view);

    /// <summary>What comes of viewers' asks; a few times a second at most.</summary>
    /// <param name="view">The view.</param>
    Task Viewers(ViewersView view);

    /// <summary>Who may open the audience's page and how many are there; when that changes.</summary>
    /// <param name="view">The view.</param>
    Task Door(DoorView view);

    /// <summary>The link of the audience's page, for the presenter's page that asked to copy; it holds a key, and is never shown.</summary>
    /// <param name="link">The link.</param>
    Task AudienceLink(string link);

    /// <summary>The ladder, and what of it is looked for; after each change of it.</summary>
    /// <param name="view">The view.</param>
    Task Ladder(LadderView view);

    /// <summary>The way on as it is planned; after each plan, and after each change of a note.</summary>
    /// <param name="view">The view.</param>
    Task RunSheet(RunSheetWire view);

    /// <summary>The answer to the panel's last question about a cell. Sent to the presenter's page that asked, and to no other.</summary>
    /// <param name="view">The answer.</param>
    Task Why(WhyView view);

    /// <summary>What vetting the panel's last grid found out. Sent to the presenter's page that asked, and to no other.</summary>
    /// <param name="view">The answer.</param>
    Task Vetted(VettedWire view);

    /// <summary>The kept shows. Sent to the presenter's page that asked, and to no other, as are the three after it.</summary>
    /// <param name="view">The list.</param>
    Task Shows(ShowsWire view);

    /// <summary>The chapters of a show.</summary>
    /// <param name="view">The chapters.</param>
    Task Chapters(ChaptersWire view);

    /// <summary>A text to save or to copy.</summary>
    /// <param name="file">The text.</param>
    Task Save(SavedFile file);

    /// <summary>Why what was asked about shows could not be done.</summary>
    /// <param name="sentence">One plain sentence with the way out.</param>
    Task ShowsRefused(string sentence);
}
