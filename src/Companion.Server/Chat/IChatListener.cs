using System.Collections.Immutable;

namespace Companion.Server.Chat;

/// <summary>Somebody who hears what is written in the chats and may answer.</summary>
public interface IChatListener
{
    /// <summary>Hears a line. Lines of programs, empty ones and repeated ones are not heard.</summary>
    /// <param name="line">The line.</param>
    /// <param name="stop">Signalled when an answer is no longer wanted.</param>
    /// <returns>What to say there in answer, in order; empty for nothing.</returns>
    ValueTask<ImmutableArray<string>> Hear(ChatLine line, CancellationToken stop);
}
