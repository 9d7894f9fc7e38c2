namespace ClimateLens.Logs.Describe.Words;

/// <summary>What a word of a header speaks of. <see cref="WordTable"/> has the words, docs/describe.md lists them.</summary>
internal enum Idea
{
    // What is measured.
    Temperature, Humidity, Absolute, VapourPressureDeficit, HumidityDeficit, DewPoint, WetBulb, DryBulb, CarbonDioxide,
    Radiation, Sun, Light, Par, Wind, Gust, Speed, Direction, Rain, Pressure, Moisture, Wetness, Conductivity, Acidity,

    // Where.
    Air, Inside, Outside, Leaf, Canopy, Medium, Pipe, Supply, Return, Boiler, Cover,

    // What is steered.
    Vent, Ventilation, LeeSide, WindSide, Screen, Heating, Valve, Mixing, Irrigation, Water, Amount, Counter, Fog, Fan, Lamp, Dosing, Power, Dehumidify,

    // Which figure of it.
    SetPoint, Measured, Average, Minimum, Maximum, Deviation, Felt, Sum, DayAverage, Position, Alarm, Battery, Number, Place,

    // Times.
    Date, Time, Start, End, Utc, Local, Year, Month, Day, Hour, Minute, DayOfYear,

    // Long tables.
    House, Sensor, Variable, Value, Unit,

    // Records.
    Bench, Pot, Plant, Level, Weight, Operator, Note, Method, Minutes, Width, What, ActiveIngredient, Group, Purpose, Rate, Tank, Symptom, Count, Reentry, LeafState, Treatment, Floor,
}
