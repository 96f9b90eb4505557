namespace Companion.Session.Asks;

/// <summary>Something that a viewer wants to know or to tell, whichever way it came in. <see cref="AskText"/> reads them from chat.</summary>
public abstract record Ask
{
    private protected Ask()
    {
    }
}
