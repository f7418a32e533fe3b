package org.ullage.record;

import com.fasterxml.jackson.annotation.JacksonAnnotationsInside;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Marks a record that is kept in a file: what is not recorded is left out of it. The order of the fields is that of the components. */
@JacksonAnnotationsInside
@WithoutAbsent
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@interface Recorded {}
