namespace Companion.Server.Access;

/// <summary>What a caller is told who is not let in. Each says the way out, and none repeats what was sent.</summary>
internal static class Sentences
{
    /// <summary>The address is none of ours.</summary>
    public const string ForeignHost =
        "This address is not one of the companion's: open the link that it printed, or name the host in companion.json.";

    /// <summary>A page of another site asked.</summary>
    public const string ForeignOrigin = "Only the companion's own pages may ask this: open the link that it printed.";

    /// <summary>The key is none of the four.</summary>
    public const string UnknownKey = "This key is not known, or was replaced: open the link that the companion printed last.";

    /// <summary>No key came, or an unknown one.</summary>
    public const string NoKey = "This needs a key: open the link that the companion printed.";

    /// <summary>The key is good for something else.</summary>
    public const string OtherKey = "This key does not open this page: open the page by its own link.";

    /// <summary>Too many keys were tried.</summary>
    public const string TooManyKeys = "Too many keys were tried: wait a few seconds.";
}
