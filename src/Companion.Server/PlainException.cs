namespace Companion.Server;

/// <summary>
/// Something that a person can put right: its message is one plain sentence with the way out, and is all that is shown of it.
/// </summary>
/// <param name="sentence">The sentence.</param>
/// <param name="inner">What lies behind it, for the log; may be null.</param>
public sealed class PlainException(string sentence, Exception? inner = null) : Exception(sentence, inner);
