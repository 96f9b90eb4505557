namespace Companion.Session.Commands;

/// <summary>Something somebody wants done. <c>Decider</c> turns it into events or a refusal.</summary>
public abstract record Command
{
    private protected Command()
    {
    }
}
