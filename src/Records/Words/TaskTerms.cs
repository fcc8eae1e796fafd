using System.Globalization;
using System.Resources;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Designs;

namespace Slantwise.Records.Words;

/// <summary>What the names of a task's design are called: patterns, parts that carry, factors, needs.</summary>
public static class TaskTerms
{
    private static readonly ResourceManager Texts = new(typeof(TaskTerms));

    /// <summary>A name of the design in words.</summary>
    /// <typeparam name="T">Such as <see cref="MovementPattern"/>, <see cref="FunctionNeed"/> or <see cref="DoseKind"/>.</typeparam>
    /// <param name="named">The name.</param>
    /// <param name="culture">The reader's language; English where there is no translation.</param>
    /// <exception cref="InvalidOperationException">It has no words.</exception>
    public static string Of<T>(T named, CultureInfo culture) where T : struct, Enum =>
        Texts.GetString(typeof(T).Name + named, culture) ?? throw new InvalidOperationException($"No words for {typeof(T).Name} {named}.");

    /// <summary>What a factor is called: a dose by the program, any other by the task's own words.</summary>
    /// <param name="factor">A row of a task's grid.</param>
    /// <param name="words">The task's words.</param>
    /// <param name="culture">The reader's language.</param>
    /// <returns>The factor's key where the words lack it.</returns>
    public static string Of(TaskFactor factor, TaskWords words, CultureInfo culture) =>
        factor.Dose is { } dose ? Of(dose, culture) : words.Factors.TryGetValue(factor.Key, out var named) ? named.Name : factor.Key;

    /// <summary>What a value of a factor means.</summary>
    /// <param name="factor">The factor.</param>
    /// <param name="value">One of its values.</param>
    /// <param name="words">The task's words.</param>
    /// <param name="culture">The reader's language.</param>
    /// <returns>A number in the reader's way of writing; a word's meaning, or its key where the words lack it.</returns>
    public static string Of(TaskFactor factor, FactorValue value, TaskWords words, CultureInfo culture) =>
        value.Amount is { } amount ? amount.ToString(culture)
        : words.Factors.TryGetValue(factor.Key, out var named) && named.Values.TryGetValue(value.Key, out var meaning) ? meaning
        : value.Key;
}
