using System.Collections.Immutable;
using Companion.Server.Chat;

namespace Companion.Server.Tests.Chat;

/// <summary>Answers each line with the same text and the writer's name.</summary>
internal sealed class Echo : IChatListener
{
    public ValueTask<ImmutableArray<string>> Hear(ChatLine line, CancellationToken stop) => new([$"{line.DisplayName}: {line.Text}"]);
}
