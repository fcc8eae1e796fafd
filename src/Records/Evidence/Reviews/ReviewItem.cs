using System.Globalization;
using Slantwise.Records.Words;

namespace Slantwise.Records.Evidence.Reviews;

/// <summary>Something a class's entries show, with its numbers, and a question about it. No answer, and nobody's name.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="ReasonKey">The name of the reason's sentence in the review words.</param>
/// <param name="ReasonArguments">What the reason's gaps are filled with, in order.</param>
/// <param name="QuestionKey">The name of the question's sentence.</param>
/// <param name="QuestionArguments">What the question's gaps are filled with, in order.</param>
public sealed record ReviewItem(ReviewKind Kind, string ReasonKey, IReadOnlyList<object> ReasonArguments, string QuestionKey, IReadOnlyList<object> QuestionArguments)
{
    /// <summary>The task it is about; none where no task is meant.</summary>
    public Guid? TaskId { get; init; }

    /// <summary>What was seen, as a sentence.</summary>
    /// <param name="culture">The reader's language.</param>
    /// <exception cref="InvalidOperationException">The key has no sentence.</exception>
    public string Reason(CultureInfo culture) => ReviewWords.Sentence(ReasonKey, culture, ReasonArguments);

    /// <summary>What to ask, as a sentence.</summary>
    /// <param name="culture">The reader's language.</param>
    /// <exception cref="InvalidOperationException">The key has no sentence.</exception>
    public string Question(CultureInfo culture) => ReviewWords.Sentence(QuestionKey, culture, QuestionArguments);
}
