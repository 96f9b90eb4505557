using Companion.Drawing.Pictures;
using Companion.Server.Live.Asks;
using Companion.Server.Settings;
using Companion.Server.Wire;
using Companion.Session.Asks;
using Companion.Session.Asks.Answers;
using Companion.Session.Views;

namespace Companion.Server.Live.Audience;

/// <summary>Has the asks from the audience's page answered by this program's session, by the same rules as those from a chat.</summary>
/// <param name="desk">Where asks are answered.</param>
/// <param name="voice">The words.</param>
/// <param name="settings">The settings.</param>
internal sealed class DeskAsks(AskDesk desk, Voice voice, ServerSettings settings) : IAudienceAsks
{
    private static readonly Way Page = new("audience", IsShared: false);

    private readonly AnswerWords _words = new(voice.Wording, settings.Asks.Prefix);

    /// <inheritdoc/>
    public async Task<AudienceAnswer> Ask(string viewer, Ask ask, CancellationToken gone) =>
        (await desk.Ask(Page, viewer, "", ask).WaitAsync(gone)).Answer switch
        {
            null => AudienceAnswer.Nothing,
            HintGiven given => new(AnswerKind.Hint, _words.ParagraphsOf(given), given.Hint.Grade, PictureOf.Hint(given.Hint)),
            WhyFollows why => new(AnswerKind.Reason, _words.ParagraphsOf(why), null, PictureOf.Hint(why.Hint)),
            Counted counted => new(AnswerKind.Counted, _words.ParagraphsOf(counted), null, null),
            var other => new(AnswerKind.Notice, _words.ParagraphsOf(other), null, null),
        };
}
