/**
 * From a weld and its heat treatment to strength, and what follows from it. A program begins with
 * {@link afterweld.Afterweld}; the packages exported to all are those of the values it hands out.
 */
module afterweld.simulator {
  requires com.fasterxml.jackson.core;
  requires com.fasterxml.jackson.databind;
  requires com.fasterxml.jackson.dataformat.csv;
  requires com.fasterxml.jackson.dataformat.yaml;
  requires commons.math3;
  requires org.yaml.snakeyaml;

  exports afterweld;
  exports afterweld.casefile;
  exports afterweld.casefile.text;
  exports afterweld.choice;
  exports afterweld.choice.answer;
  exports afterweld.choice.filler;
  exports afterweld.choice.practice;
  exports afterweld.document;
  exports afterweld.joint;
  exports afterweld.joint.bend;
  exports afterweld.material;
  exports afterweld.quantity;
  exports afterweld.section;
  exports afterweld.section.soundness;
  exports afterweld.strength;
  exports afterweld.study;
  exports afterweld.thermal;
  exports afterweld.thermal.furnace;
  exports afterweld.weld;
  exports afterweld.weldmetal;
}
