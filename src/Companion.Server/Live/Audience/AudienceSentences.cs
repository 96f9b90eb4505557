namespace Companion.Server.Live.Audience;

/// <summary>What viewers are told who are not let in or not answered. Each says the way out where there is one.</summary>
internal static class AudienceSentences
{
    /// <summary>Nobody may come in.</summary>
    public const string Closed = "The presenter has closed this page for now. It opens by itself when they open it.";

    /// <summary>The presenter's server, which this one follows, is away.</summary>
    public const string Away = "The presenter's server cannot be reached from here now. This page opens by itself when it is back.";

    /// <summary>The presenter's server gave no answer.</summary>
    public const string Unanswered = "The presenter's server did not answer: ask again.";

    /// <summary>Only who has the link may come in.</summary>
    public const string ByLink = "This page opens by its own link: use the one that the presenter gave out.";

    /// <summary>As many are in as may be.</summary>
    public const string Full = "As many viewers are here as there is room for. This page opens by itself when somebody leaves.";

    /// <summary>Too many came from one address.</summary>
    public const string TooManyFromHere = "Too many pages are open, or were opened, from your address: close some, or wait a little.";

    /// <summary>Too many asks came from one page or one address.</summary>
    public const string TooManyAsks = "Too many asks came from here: wait a few seconds.";
}
