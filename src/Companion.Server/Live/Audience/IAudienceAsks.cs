using Companion.Server.Wire;
using Companion.Session.Asks;

namespace Companion.Server.Live.Audience;

/// <summary>Where asks from the audience's page are answered: by the session of this program, or by another one that it follows.</summary>
internal interface IAudienceAsks
{
    /// <summary>Answers an ask.</summary>
    /// <param name="viewer">What the viewer is known by, whatever it is: the same for all asks of one viewer. It is kept in memory alone.</param>
    /// <param name="ask">What is asked.</param>
    /// <param name="gone">Signalled when nobody waits for the answer any more.</param>
    /// <returns>The answer, for this viewer alone; <see cref="AudienceAnswer.Nothing"/> where nothing is said.</returns>
    Task<AudienceAnswer> Ask(string viewer, Ask ask, CancellationToken gone);
}
