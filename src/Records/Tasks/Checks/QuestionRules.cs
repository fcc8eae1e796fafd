namespace Slantwise.Records.Tasks.Checks;

/// <summary>What a question to a pupil keeps to: open, short, without an answer and without a level.</summary>
internal static class QuestionRules
{
    public const int WordCountMost = 18;

    public static void Add(PartFindings said, string part, string question, Wording? wording)
    {
        if (!question.TrimEnd().EndsWith('?')) said.Flag("DesignQuestionMark", part);
        if (WordsRules.WordCount(question) > WordCountMost) said.Flag("DesignQuestionLong", part, WordsRules.WordCount(question), WordCountMost);
        if (wording is null) return;
        if (Wording.FirstIn(question, wording.Open) is null) said.Flag("DesignQuestionClosed", part, string.Join(", ", wording.Open));
        if (Wording.FirstIn(question, wording.LevelWords) is { } level) said.Flag("DesignQuestionLevel", part, level);
        if (Wording.FirstIn(question, wording.Telling) is { } told) said.Flag("DesignQuestionTells", part, told);
    }
}
