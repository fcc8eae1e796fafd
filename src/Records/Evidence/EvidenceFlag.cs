using System.Globalization;
using Slantwise.Records.Words;

namespace Slantwise.Records.Evidence;

/// <summary>Entries that do not fit together. It says so and blocks nothing.</summary>
/// <param name="Key">The name of its sentence in the question words.</param>
/// <param name="Arguments">What the sentence's gaps are filled with, in order.</param>
/// <param name="LessonId">In which lesson.</param>
/// <param name="TaskId">About which task; none where no task is meant.</param>
/// <param name="SetNumber">In which set, from 1; none where no set is meant.</param>
/// <param name="EntryIds">The entries meant.</param>
public sealed record EvidenceFlag(
    string Key, IReadOnlyList<object> Arguments, Guid LessonId, Guid? TaskId, int? SetNumber, IReadOnlyList<Guid> EntryIds)
{
    /// <summary>The flag as a sentence.</summary>
    /// <param name="culture">The reader's language; English where there is no translation.</param>
    /// <exception cref="InvalidOperationException">The key has no sentence.</exception>
    public string Sentence(CultureInfo culture) => QuestionWords.Sentence(Key, culture, Arguments);
}
