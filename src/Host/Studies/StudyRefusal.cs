using Slantwise.Host.Answers;

namespace Slantwise.Host.Studies;

/// <summary>What is refused of a command line that computes from plain tables.</summary>
internal static class StudyRefusal
{
    /// <summary>A refusal of input, by the name of its words.</summary>
    public static Refusal Of(string key, params object?[] arguments) => new(StudyWords.Say(key, arguments));
}
