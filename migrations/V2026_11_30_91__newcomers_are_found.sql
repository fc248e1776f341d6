create index patient_registered on patient (registered_on);
