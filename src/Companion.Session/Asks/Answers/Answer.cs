namespace Companion.Session.Asks.Answers;

/// <summary>What a viewer is told. Each kind has members for what it may say and for nothing else.</summary>
public abstract record Answer
{
    private protected Answer()
    {
    }
}
