namespace Companion.Session.Asks.Calls;

/// <summary>Who found a digit first, the viewers or the presenter, as far as the delay lets us tell.</summary>
public enum CallStanding
{
    /// <summary>A viewer: the call came before anybody can have seen the presenter's entry.</summary>
    First,

    /// <summary>Too close to tell.</summary>
    Close,

    /// <summary>The presenter: every viewer can have seen the entry.</summary>
    After,
}
