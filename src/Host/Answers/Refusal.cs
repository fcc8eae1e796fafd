using Slantwise.Host.Words;

namespace Slantwise.Host.Answers;

/// <summary>A command that is not carried out, in words for the person who typed it.</summary>
/// <param name="sentence">What, where, and what is allowed.</param>
/// <param name="exitCode">2 for input that cannot be taken, 1 for a machine that cannot do it now.</param>
internal sealed class Refusal(string sentence, int exitCode = Refusal.BadInput) : Exception(sentence)
{
    public const int BadInput = 2;
    public const int NotPossible = 1;

    /// <summary>The exit code of the program.</summary>
    public int ExitCode => exitCode;

    /// <summary>Each thing that is wrong, a line each; the sentence sums them up. Empty where the sentence says it all.</summary>
    public IReadOnlyList<string> Details { get; init; } = [];

    /// <summary>A refusal of input, by the name of its words.</summary>
    public static Refusal Of(string key, params object?[] arguments) => new(HostWords.Say(key, arguments));
}
