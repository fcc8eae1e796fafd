using Slantwise.Paper.Layout;
using Slantwise.Records.Lessons;

namespace Slantwise.Paper.LessonPages;

/// <summary>What other plans add to the lesson page: a line for each, in the order in which they stand there. A plan with nothing to say adds no block.</summary>
internal static class PlanBlocks
{
    /// <summary>The blocks of all other plans.</summary>
    /// <param name="record">The lesson, with its frozen sheet.</param>
    /// <param name="plans">What was planned for it.</param>
    /// <param name="options">Paper, language, whether pupils may be named.</param>
    /// <param name="frame">The page.</param>
    /// <param name="detail">How much the page says.</param>
    public static IEnumerable<Block> Of(LessonRecord record, LessonPlans plans, PaperOptions options, PageFrame frame, LessonDetail detail) =>
    [
        // The plan's answers: tries each, waiting, the last one done.

        // The groups.
    ];
}
