using System.Globalization;
using Slantwise.Records.Entries;
using Slantwise.Records.Words;

namespace Slantwise.Records.Evidence;

/// <summary>Whom to ask what: a reason in the data and a question. No answer, no advice about a level.</summary>
public sealed record Conference
{
    /// <summary>The pupil to talk with.</summary>
    public required Guid PupilId { get; init; }

    /// <summary>What to call the pupil.</summary>
    public required string Label { get; init; }

    /// <summary>What the talk is about.</summary>
    public required VisitTopic Topic { get; init; }

    /// <summary>The task; none where no task is meant.</summary>
    public Guid? TaskId { get; init; }

    /// <summary>The name of the reason's sentence in the question words.</summary>
    public required string ReasonKey { get; init; }

    /// <summary>What the reason's gaps are filled with, in order: whole numbers and names.</summary>
    public IReadOnlyList<object> ReasonArguments { get; init; } = [];

    /// <summary>The name of the question's sentence in the question words.</summary>
    public required string QuestionKey { get; init; }

    /// <summary>What the question's gaps are filled with, in order.</summary>
    public IReadOnlyList<object> QuestionArguments { get; init; } = [];

    /// <summary>Whether it is about safety: always first, and not a matter of the pupil's choice.</summary>
    public bool IsSafety => Topic == VisitTopic.Safety;

    /// <summary>The entries the reason rests on; empty only where the reason is that there are none.</summary>
    public IReadOnlyList<Guid> EntryIds { get; init; } = [];

    /// <summary>Why to talk, as a sentence.</summary>
    /// <param name="culture">The reader's language; English where there is no translation.</param>
    /// <exception cref="InvalidOperationException">The key has no sentence.</exception>
    public string Reason(CultureInfo culture) => QuestionWords.Sentence(ReasonKey, culture, ReasonArguments);

    /// <summary>What to ask, as a sentence.</summary>
    /// <param name="culture">The reader's language; English where there is no translation.</param>
    /// <exception cref="InvalidOperationException">The key has no sentence.</exception>
    public string Question(CultureInfo culture) => QuestionWords.Sentence(QuestionKey, culture, QuestionArguments);
}
