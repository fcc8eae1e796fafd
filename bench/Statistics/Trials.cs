using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Statistics;

/// <summary>Invented trials of a known model: abilities N(0, 1.2²), levels spread evenly from −2 to 2, one choice in five at random, the others near the ability.</summary>
internal static class Trials
{
    /// <summary>One trial at a time, as a log has them; the lessons one after the other.</summary>
    public static IEnumerable<ResponseTrial> Of(int pupilCount, int trialsEach, int levelCount, int lessonCount, int seed)
    {
        var random = new Random(seed);
        for (var pupil = 0; pupil < pupilCount; pupil++)
        {
            var ability = 1.2 * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
            for (var trial = 0; trial < trialsEach; trial++)
            {
                var near = (int)Math.Round((Math.Clamp(ability, -2, 2) + 2) / 4 * (levelCount - 1)) + random.Next(-1, 2);
                var level = random.Next(5) == 0 ? random.Next(levelCount) : Math.Clamp(near, 0, levelCount - 1);
                var difficulty = -2 + 4.0 * level / (levelCount - 1);
                yield return ResponseTrial.Single(pupil, level, trial * lessonCount / trialsEach, random.NextDouble() < 1 / (1 + Math.Exp(difficulty - ability)));
            }
        }
    }

    /// <summary>Pupils of whom nothing is known beforehand.</summary>
    public static ResponsePupil[] Pupils(int count)
    {
        var pupils = new ResponsePupil[count];
        Array.Fill(pupils, new());
        return pupils;
    }

    /// <summary>Levels of as many tasks.</summary>
    public static ResponseLevel[] Levels(int count) => [.. Enumerable.Range(0, count).Select(level => new ResponseLevel(level))];
}
